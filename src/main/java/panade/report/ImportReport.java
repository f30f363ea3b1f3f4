package panade.report;

import java.util.ArrayList;
import java.util.List;
import panade.intake.Intake;
import panade.intake.Intake.Document;
import panade.intake.Request.Differing;
import panade.intake.table.Change;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;

/** Words what taking a file in did, or would do. */
public final class ImportReport {
    private static final List<Column> COLUMNS = List.of(
            new Column("", false),
            new Column("Of", false),
            new Column("What", false),
            new Column("was", false),
            new Column("is", false));

    private final Intake intake;

    private ImportReport(Intake intake) {
        this.intake = intake;
    }

    /** The report; {@code done} tells whether it was written. */
    public static ReportDocument of(Intake intake, boolean done) {
        return new ImportReport(intake).document(done);
    }

    private ReportDocument document(boolean done) {
        var blocks = new ArrayList<Block>();
        if (intake.isRefused()) {
            blocks.add(new Paragraph(
                    "Some of it differs from what is there. Say --update to take the new values, or --keep to"
                            + " add only what is new."));
        }
        intake.files().forEach(file -> {
            blocks.add(new Heading(file.file() + ": " + words(file)));
            blocks.add(isPlain(file) ? additions(file) : differences(file));
        });
        if (!intake.untaken().isEmpty()) {
            blocks.add(new Heading("Not taken"));
            blocks.add(new Points(intake.untaken()));
        }
        if (!intake.notes().isEmpty()) {
            blocks.add(new Heading("Left out"));
            blocks.add(new Points(intake.notes()));
        }
        if (!intake.unsaid().isEmpty()) {
            blocks.add(new Heading("Mind"));
            blocks.add(new Points(List.of("Allergens are not known, which is not the same as none, of: "
                    + String.join(", ", intake.unsaid())
                    + ". Read the supplier's papers and write them down: \"allergens\": [] is for none.")));
        }
        return new ReportDocument(title(done), blocks);
    }

    private static boolean isPlain(Document file) {
        return file.changes().stream()
                .allMatch(change -> change.field().isEmpty() && change.before().isEmpty());
    }

    private Table additions(Document file) {
        return new Table(
                List.of(new Column("", false), new Column("What", false), new Column("", false)),
                file.changes().stream()
                        .map(change -> List.of(word(change), change.of(), change.after()))
                        .toList());
    }

    private Table differences(Document file) {
        return new Table(COLUMNS, file.changes().stream().map(this::row).toList());
    }

    private String title(boolean done) {
        if (intake.isRefused()) {
            return "Nothing was written.";
        }
        int untaken = intake.untaken().size();
        var but = untaken == 0 ? "" : " but for " + untaken + (untaken == 1 ? " row" : " rows");
        if (intake.toWrite().isEmpty()) {
            return "Nothing to write" + but + ": all of it is there already, or stays as it is.";
        }
        return done ? "Taken in" + but + "." : "This would be taken in" + but + "; nothing was written.";
    }

    private static String words(Document file) {
        return (file.exists() ? "" : "new, ")
                + count(file, Change.Sort.ADDED, "added")
                + (file.differs()
                        ? ", " + count(file, Change.Sort.CHANGED, "different") + ", "
                                + count(file, Change.Sort.GONE, "gone")
                        : "");
    }

    private static String count(Document file, Change.Sort sort, String words) {
        return file.changes().stream().filter(change -> change.sort() == sort).count() + " " + words;
    }

    private List<String> row(Change change) {
        return List.of(word(change), change.of(), change.field(), change.before(), change.after());
    }

    private String word(Change change) {
        boolean kept = intake.differing() == Differing.KEPT;
        return switch (change.sort()) {
            case ADDED -> "added";
            case CHANGED -> kept ? "kept" : intake.isRefused() ? "differs" : "changed";
            case GONE -> kept ? "kept" : "gone";
        };
    }
}
