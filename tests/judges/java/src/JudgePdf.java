import java.io.FileInputStream;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Validates each PDF named on the command line, or on standard input, against PDF/UA-1 and PDF/A-3a; a line of JSON a file and standard. */
public final class JudgePdf {
    private static final PDFAFlavour[] STANDARDS = {PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_3_A};

    public static void main(String[] files) throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        for (String file : files) {
            for (PDFAFlavour standard : STANDARDS) {
                System.out.println(judged(Path.of(file), standard));
            }
        }
    }

    private static String judged(Path file, PDFAFlavour standard) throws Exception {
        try (FileInputStream bytes = new FileInputStream(file.toFile());
                PDFAParser parser = Foundries.defaultInstance().createParser(bytes, standard);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(standard, 10000, false, false, false)) {
            ValidationResult result = validator.validate(parser);
            Map<String, Integer> failed = new LinkedHashMap<>();
            Map<String, String> place = new LinkedHashMap<>();
            for (TestAssertion assertion : result.getTestAssertions()) {
                if (assertion.getStatus() != TestAssertion.Status.FAILED) continue;
                String rule = assertion.getRuleId().getClause() + "-" + assertion.getRuleId().getTestNumber();
                failed.merge(rule, 1, Integer::sum);
                place.putIfAbsent(rule, assertion.getMessage() + " at " + assertion.getLocation().getContext());
            }
            StringBuilder line = new StringBuilder();
            line.append("{\"file\":").append(quoted(file.toString())).append(",\"standard\":").append(quoted(standard.toString()))
                .append(",\"checks\":").append(result.getTotalAssertions()).append(",\"compliant\":").append(result.isCompliant()).append(",\"failed\":[");
            String between = "";
            for (Map.Entry<String, Integer> one : failed.entrySet()) {
                line.append(between).append("{\"rule\":").append(quoted(one.getKey())).append(",\"times\":").append(one.getValue())
                    .append(",\"first\":").append(quoted(place.get(one.getKey()))).append("}");
                between = ",";
            }
            return line.append("]}").toString();
        }
    }

    private static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        for (char c : text.toCharArray()) {
            if (c == '"' || c == '\\') out.append('\\').append(c);
            else if (c < 0x20) out.append(String.format("\\u%04x", (int) c));
            else out.append(c);
        }
        return out.append('"').toString();
    }
}
