import java.util.Locale;
import java.util.Scanner;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;

/**
 * Reads lines of `φ1 λ1 φ2 λ2` in degrees and prints `distance azimuth` of each, in meters and degrees from north. The first argument
 * is the semi-major axis [m], the second the flattening.
 */
public final class JudgeGeodesics {
    public static void main(String[] ellipsoid) {
        Geodesic geodesic = new Geodesic(Double.parseDouble(ellipsoid[0]), Double.parseDouble(ellipsoid[1]));
        Scanner lines = new Scanner(System.in).useLocale(Locale.ROOT);
        while (lines.hasNextDouble()) {
            GeodesicData line = geodesic.Inverse(lines.nextDouble(), lines.nextDouble(), lines.nextDouble(), lines.nextDouble());
            System.out.printf(Locale.ROOT, "%.9f %.12f%n", line.s12, (line.azi1 + 360) % 360);
        }
    }
}
