package panade.report.question;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Decimal;
import panade.quantity.UnitPrice;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.ReportDocument;
import panade.result.ImportResult;
import panade.result.ImportResult.Change;
import panade.result.ImportResult.Document;
import panade.result.ImportResult.Guess;
import panade.result.ImportResult.Kind;
import panade.result.ImportResult.Preview;

/** Words what taking a file in did, or would do. */
public final class ImportReport {
    private static final List<Column> COLUMNS = List.of(
            new Column("", false),
            new Column("Of", false),
            new Column("What", false),
            new Column("was", false),
            new Column("is", false));

    private static final int WIDTH = 98;

    private final ImportResult result;

    private ImportReport(ImportResult result) {
        this.result = result;
    }

    /** The report. */
    public static ReportDocument of(ImportResult result) {
        return new ImportReport(result).document();
    }

    private ReportDocument document() {
        var blocks = new ArrayList<Block>();
        if (result.refused()) {
            blocks.add(new Paragraph(
                    "Some of it differs from what is there. Say --update to take the new values, or --keep to"
                            + " add only what is new."));
        }
        guesses(blocks);
        result.previews().forEach(preview -> preview(preview, blocks));
        result.files().forEach(file -> file(file, blocks));
        if (!result.notTaken().isEmpty()) {
            blocks.add(new Heading("Not taken"));
            blocks.add(new Points(result.notTaken()));
        }
        if (!result.notes().isEmpty()) {
            blocks.add(new Heading("Note"));
            blocks.add(new Points(result.notes()));
        }
        if (!result.allergensNotKnown().isEmpty()) {
            blocks.add(new Heading("Mind"));
            blocks.add(new Points(List.of("Allergens are not known, which is not the same as none, of: "
                    + String.join(", ", result.allergensNotKnown())
                    + ". Read the supplier's papers and write them down: \"allergens\": [] is for none.")));
        }
        return new ReportDocument(title(), blocks);
    }

    private void guesses(List<Block> blocks) {
        if (!result.guesses().isEmpty()) {
            boolean sheets =
                    result.guesses().stream().map(Guess::sheet).distinct().count() > 1;
            blocks.add(new Heading("Columns, as their heads have it"));
            blocks.add(new Table(
                    List.of(new Column("Head", false), new Column("taken as", false)),
                    result.guesses().stream()
                            .map(guess -> List.of((sheets ? guess.sheet() + ": " : "") + guess.heading(), guess.as()))
                            .toList()));
            blocks.add(new Paragraph("Where that is not so, say what a column is: --column \"HEAD=NAME\"."));
        }
    }

    /** As many columns as a line has room for, at least three. */
    private static void preview(Preview preview, List<Block> blocks) {
        int fit = 0;
        int width = 0;
        for (int i = 0; i < preview.columns().size(); i++) {
            int column = i;
            width += 2
                    + Math.max(
                            preview.columns().get(i).length(),
                            preview.rows().stream()
                                    .mapToInt(row -> row.get(column).length())
                                    .max()
                                    .orElse(0));
            fit = width <= WIDTH || i < 3 ? i + 1 : fit;
        }
        int shown = fit;
        blocks.add(new Heading("Read as " + preview.of()));
        blocks.add(new Table(
                preview.columns().subList(0, shown).stream()
                        .map(heading -> new Column(heading, isNumbers(preview, heading)))
                        .toList(),
                preview.rows().stream().map(row -> row.subList(0, shown)).toList()));
        var more = new ArrayList<String>();
        if (preview.more() > 0) {
            more.add(preview.more() + (preview.more() == 1 ? " row" : " rows"));
        }
        if (shown < preview.columns().size()) {
            more.add("the columns "
                    + String.join(
                            "; ",
                            preview.columns().subList(shown, preview.columns().size())));
        }
        if (!more.isEmpty()) {
            blocks.add(new Paragraph("Not shown here: " + String.join(" and ", more) + "."));
        }
    }

    private static boolean isNumbers(Preview preview, String heading) {
        int column = preview.columns().indexOf(heading);
        return column > 0
                && preview.rows().stream()
                        .map(row -> row.get(column))
                        .allMatch(cell -> cell.isEmpty() || Decimal.parse(cell).isPresent());
    }

    /** What differs; a new file holds what was shown just before. */
    private void file(Document file, List<Block> blocks) {
        var words = file.file() + ": " + words(file);
        boolean shown = file.isNew()
                && !result.previews().isEmpty()
                && result.previews().stream().allMatch(preview -> preview.more() == 0);
        if (shown) {
            blocks.add(new Paragraph(words + "."));
        } else {
            blocks.add(new Heading(words));
            blocks.add(isPlain(file) ? additions(file) : differences(file));
        }
    }

    private static boolean isPlain(Document file) {
        return file.changes().stream()
                .allMatch(change -> change.field().isEmpty() && change.was().isEmpty());
    }

    private Table additions(Document file) {
        return new Table(
                List.of(new Column("", false), new Column("What", false), new Column("", false)),
                file.changes().stream()
                        .map(change -> List.of(word(change), change.of(), change.is()))
                        .toList());
    }

    private Table differences(Document file) {
        return new Table(COLUMNS, file.changes().stream().map(this::row).toList());
    }

    private String title() {
        if (result.refused()) {
            return "Nothing was written.";
        }
        int untaken = result.notTaken().size();
        var but = untaken == 0 ? "" : " but for " + untaken + (untaken == 1 ? " row" : " rows");
        if (result.changesNothing()) {
            return "Nothing to write" + but + ": all of it is there already, or stays as it is.";
        }
        return result.written() ? "Taken in" + but + "." : "This would be taken in" + but + "; nothing was written.";
    }

    private static String words(Document file) {
        return (file.isNew() ? "new, " : "")
                + count(file, Kind.ADDED, "added")
                + (file.changes().stream().anyMatch(change -> change.what() != Kind.ADDED)
                        ? ", " + count(file, Kind.CHANGED, "different") + ", " + count(file, Kind.GONE, "gone")
                        : "");
    }

    private static String count(Document file, Kind sort, String words) {
        return file.changes().stream().filter(change -> change.what() == sort).count() + " " + words;
    }

    private List<String> row(Change change) {
        return List.of(word(change), change.of(), change.field(), change.was(), change.is() + risen(change));
    }

    /** By how much a price changed, in percent rounded to a tenth. */
    private static String risen(Change change) {
        var was = UnitPrice.perKg(change.was()).filter(price -> price.signum() > 0);
        var is = UnitPrice.perKg(change.is());
        if (!change.field().equals("price") || was.isEmpty() || is.isEmpty()) {
            return "";
        }
        var percent = is.get().divide(was.get()).subtract(BigFraction.ONE).multiply(100);
        var rounded = percent.bigDecimalValue(1, RoundingMode.HALF_EVEN);
        return " (" + (rounded.signum() < 0 ? "" : "+") + rounded.toPlainString() + " %)";
    }

    private String word(Change change) {
        boolean kept = result.keepsOld();
        return switch (change.what()) {
            case ADDED -> "added";
            case CHANGED -> kept ? "kept" : result.refused() ? "differs" : "changed";
            case GONE -> kept ? "kept" : "gone";
        };
    }
}
