package panade.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import panade.assemble.ImportResults;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.ProblemPrinter;
import panade.cli.frame.UsageErrors;
import panade.cli.frame.Version;
import panade.document.Documents;
import panade.document.syntax.Reading;
import panade.export.ResultJson;
import panade.file.WholeFile;
import panade.intake.Importing;
import panade.intake.Intake;
import panade.intake.Request;
import panade.intake.Request.Differing;
import panade.intake.table.Columns;
import panade.intake.table.Slug;
import panade.render.PlainText;
import panade.render.TextRenderer;
import panade.report.question.ImportReport;
import panade.sheet.poi.PoiSpreadsheets;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes spreadsheets and open food-composition data into an ingredient set. */
@Command(
        name = "import",
        description = {
            "Take a spreadsheet or an open food-composition download as ingredients or prices.",
            "What columns are is guessed by their heads and told; where several heads fit, you are asked to say.",
            "A quote replaces the rows of its own suppliers in the price list. Rows that cannot be taken are listed, the"
                    + " rest is taken, and the exit status is 3."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {
            "",
            "Examples: panade import quote.xlsx --into ingredient-sets/mine --supplier \"North Mill\"",
            "          panade import pantry.csv --into ingredient-sets/mine --column \"Protein=PROCNT\""
        })
public final class ImportCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            paramLabel = "FILE",
            description = "A workbook (.xlsx), a table (.csv), or a JSON download of USDA FoodData Central.")
    private @Nullable Path file;

    @Option(
            names = "--into",
            paramLabel = "SET",
            required = true,
            description = "The folder of the ingredient set, there already or new.")
    private @Nullable Path set;

    @Option(
            names = "--column",
            paramLabel = "HEADING=NAME",
            description = "What a column is, such as \"Protein=PROCNT\" or \"Salt=NACL (g/100g)\"; repeatable.")
    private final List<String> columns = new ArrayList<>();

    @Option(names = "--columns", paramLabel = "FILE", description = "The same from a file, one a line.")
    private @Nullable Path columnFile;

    @Option(
            names = "--trait",
            paramLabel = "HEADING",
            description = "Take a column as a score or measure of your own, such as bite or \"gel strength (g)\", and"
                    + " declare it in the set; repeatable.")
    private final List<String> traits = new ArrayList<>();

    @Option(names = "--sheet", paramLabel = "NAME", description = "Take this sheet of the workbook alone.")
    private @Nullable String sheet;

    @Option(
            names = "--only",
            paramLabel = "WORDS",
            description =
                    "Of a download, take the foods with these words in their name, or of this FDC ID; repeatable.")
    private final List<String> only = new ArrayList<>();

    @Option(names = "--supplier", paramLabel = "NAME", description = "Whose prices they are, where no column says so.")
    private @Nullable String supplier;

    @Option(
            names = "--per",
            paramLabel = "WEIGHT",
            description = "What they are for, such as kg, where no column says.")
    private @Nullable String per;

    @Option(names = "--currency", paramLabel = "CODE", description = "What they are in, where no column says so.")
    private @Nullable String currency;

    @Option(
            names = "--name",
            paramLabel = "NAME",
            description = "What to call the price list: prices-NAME.csv; the file's own name unless given.")
    private @Nullable String name;

    @ArgGroup
    private final Difference difference = new Difference();

    @Option(names = "--dry-run", description = "Show what would change and write nothing.")
    private boolean dry;

    @Option(names = "--json", description = "Print the result for machines.")
    private boolean json;

    /** What becomes of what is there and differs. */
    static final class Difference {
        @Option(names = "--update", description = "Take new values for what is there; the old file is kept beside.")
        private boolean update;

        @Option(names = "--keep", description = "Keep what is there and add only what is new.")
        private boolean keep;
    }

    public ImportCommand(Console console) {
        this.out = console.out();
        this.err = console.err();
    }

    @Override
    public Integer call() {
        var reading = Importing.of(request(), new PoiSpreadsheets());
        if (reading instanceof Reading.Rejected<Intake> rejected) {
            return ProblemPrinter.print(rejected.problems(), err);
        }
        var intake = ((Reading.Accepted<Intake>) reading).value();
        boolean writes = !dry && !intake.isRefused() && !intake.toWrite().isEmpty();
        var kept = writes ? write(intake) : List.<Path>of();
        var result = ImportResults.of(intake, writes);
        out.print(json ? ResultJson.text(result) : TextRenderer.render(ImportReport.of(result)));
        kept.forEach(old -> err.println(PlainText.line("As it was before: " + old)));
        return intake.isRefused() || !intake.untaken().isEmpty() ? ExitStatus.DOCUMENT : ExitStatus.DONE;
    }

    private Request request() {
        var source = Objects.requireNonNull(file);
        return new Request(
                source,
                Objects.requireNonNull(set),
                columns(),
                sheet,
                traits,
                only,
                usual(),
                name == null ? Slug.of(baseName(source)) : Slug.of(name),
                difference.update ? Differing.UPDATED : difference.keep ? Differing.KEPT : Differing.REFUSED);
    }

    private static String baseName(Path file) {
        return file.getFileName().toString().replaceAll("\\.[^.]*$", "").replaceAll("^prices-", "");
    }

    private Columns columns() {
        var entries = new ArrayList<>(columns);
        if (columnFile != null) {
            if (!(Documents.text(columnFile) instanceof Reading.Accepted<String> accepted)) {
                throw UsageErrors.in(spec, "--columns " + columnFile + ": the file is not there or cannot be read.");
            }
            accepted.value().lines().filter(line -> !line.isBlank()).forEach(entries::add);
        }
        return Columns.of(entries)
                .orElseThrow(
                        () -> UsageErrors.in(spec, "--column: expected HEADING=NAME, such as \"Protein=PROCNT\"."));
    }

    private Map<String, String> usual() {
        var usual = new LinkedHashMap<String, String>();
        put(usual, "supplier", supplier);
        put(usual, "per", per);
        put(usual, "currency", currency);
        return usual;
    }

    private static void put(Map<String, String> usual, String column, @Nullable String value) {
        if (value != null) {
            usual.put(column, value);
        }
    }

    /** Gives the copies of what was there before. */
    private List<Path> write(Intake intake) {
        var kept = new ArrayList<Path>();
        try {
            for (var document : intake.toWrite()) {
                Files.createDirectories(document.file().toAbsolutePath().getParent());
                if (document.exists() && document.differs()) {
                    kept.add(WholeFile.keepOld(document.file()));
                }
                WholeFile.write(document.file(), document.text());
            }
        } catch (IOException e) {
            throw UsageErrors.in(spec, "--into " + set + ": cannot be written there.");
        }
        return kept;
    }
}
