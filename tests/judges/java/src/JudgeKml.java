import java.io.File;
import java.io.InputStream;
import java.net.URI;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import javax.xml.validation.Validator;
import org.xml.sax.ErrorHandler;
import org.xml.sax.SAXParseException;

/** Validates each KML named on the command line against the OGC's schema of KML 2.2; prints `file TAB line TAB message` for each fault. */
public final class JudgeKml {
    private static final String KML = "ogc/kml/2.2.0/ogckml22.xsd";
    private static final String ADDRESSES = "oasis/election/external/xAL.xsd";

    public static void main(String[] files) throws Exception {
        SchemaFactory factory = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
        factory.setResourceResolver((type, namespace, publicId, systemId, base) -> {
            String path = systemId.endsWith("xAL.xsd") ? ADDRESSES : "ogc/kml/2.2.0/" + new File(URI.create(systemId).getPath()).getName();
            return new Resource(publicId, systemId, base, bundled(path));
        });
        Schema schema = factory.newSchema(new StreamSource(bundled(KML), KML));
        for (String file : files) {
            Validator validator = schema.newValidator();
            validator.setErrorHandler(new Faults(file));
            validator.validate(new StreamSource(new File(file)));
        }
    }

    private static InputStream bundled(String path) {
        InputStream found = JudgeKml.class.getClassLoader().getResourceAsStream(path);
        if (found == null) throw new IllegalStateException("the schemas hold no " + path);
        return found;
    }

    private record Faults(String file) implements ErrorHandler {
        @Override
        public void warning(SAXParseException fault) {
            tell(fault);
        }

        @Override
        public void error(SAXParseException fault) {
            tell(fault);
        }

        @Override
        public void fatalError(SAXParseException fault) {
            tell(fault);
        }

        private void tell(SAXParseException fault) {
            System.out.println(file + "\t" + fault.getLineNumber() + "\t" + fault.getMessage());
        }
    }
}
