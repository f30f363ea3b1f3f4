package panade.export;

import java.util.stream.Collectors;
import panade.result.TraceResult;

/** Writes the points of a curve as CSV (RFC 4180). */
public final class TraceCsv {
    private TraceCsv() {}

    /** A line for the headings, then one for each point. */
    public static String of(TraceResult curve) {
        return curve.points().stream()
                .map(point -> point.at().toPlainString() + ","
                        + ResultJson.number(point.costPerKg()).toPlainString() + "\r\n")
                .collect(Collectors.joining("", "at,costPerKg\r\n", ""));
    }
}
