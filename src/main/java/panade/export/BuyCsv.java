package panade.export;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import panade.result.BuyResult;
import panade.result.BuyResult.Line;
import panade.result.BuyResult.Period;

/** Writes the order lists of the plan that is advised as CSV. */
public final class BuyCsv {
    private BuyCsv() {}

    /** A line for the headings, then one for each line of an order. */
    public static String of(BuyResult result) {
        var text = new StringBuilder();
        try (var csv = CSVFormat.RFC4180.print(text)) {
            csv.printRecord("period", "supplier", "ingredient", "packs", "pack", "kilograms", "money");
            for (var period : result.advised()) {
                for (var line : period.lines()) {
                    print(period, line, csv);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static void print(Period period, Line line, CSVPrinter csv) throws IOException {
        var pack = line.pack();
        csv.printRecord(
                GuardedText.of(period.period()),
                GuardedText.of(line.supplier()),
                GuardedText.of(line.ingredient()),
                line.packs() == null ? "" : ResultJson.number(line.packs()).toPlainString(),
                pack == null ? "" : GuardedText.of(pack),
                ResultJson.number(line.kilograms()).toPlainString(),
                ResultJson.number(line.money()).toPlainString());
    }
}
