package panade.report.question;

import java.util.ArrayList;
import java.util.List;
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
import panade.result.ImportResult.Kind;

/** Words what taking a file in did, or would do. */
public final class ImportReport {
    private static final List<Column> COLUMNS = List.of(
            new Column("", false),
            new Column("Of", false),
            new Column("What", false),
            new Column("was", false),
            new Column("is", false));

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
        result.files().forEach(file -> {
            blocks.add(new Heading(file.file() + ": " + words(file)));
            blocks.add(isPlain(file) ? additions(file) : differences(file));
        });
        if (!result.notTaken().isEmpty()) {
            blocks.add(new Heading("Not taken"));
            blocks.add(new Points(result.notTaken()));
        }
        if (!result.notes().isEmpty()) {
            blocks.add(new Heading("Left out"));
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
        return List.of(word(change), change.of(), change.field(), change.was(), change.is());
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
