package panade.cli.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import panade.cli.frame.ChoiceConverter;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.KitchenFile;
import panade.cli.frame.ProblemPrinter;
import panade.cli.frame.UsageErrors;
import panade.cli.frame.Version;
import panade.cli.interview.Addition;
import panade.cli.interview.AnswerDraft;
import panade.cli.interview.Dialogue;
import panade.cli.interview.Dialogue.Answer;
import panade.cli.interview.Interview;
import panade.cli.interview.Interview.Purpose;
import panade.document.Documents;
import panade.document.KitchenWorkbooks;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.domain.pantry.IngredientSet;
import panade.file.WholeFile;
import panade.intake.Beginning;
import panade.intake.table.Slug;
import panade.render.PlainText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Starts a pantry and a brief. */
@Command(
        name = "new",
        description = {
            "Start a set and a brief by answering questions, or add to what is there.",
            "Answers are kept as they are given: after a break, the same command goes on from there."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {
            "",
            "Example: panade new",
            "         panade new --add ingredient",
            "         panade new --xlsx kitchen.xlsx"
        })
public final class NewCommand implements Callable<Integer> {
    private final Supplier<BufferedReader> in;
    private final PrintWriter out;
    private final PrintWriter err;

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            paramLabel = "FOLDER",
            arity = "0..1",
            description = "Where constraints and ingredient-sets are or are to be; this folder unless given.")
    private final Path folder = Path.of("");

    @Option(
            names = "--xlsx",
            paramLabel = "FILE",
            description = "Ask nothing: write a small example kitchen as a workbook, to be changed into your own.")
    private @Nullable Path workbook;

    @Option(
            names = "--add",
            paramLabel = "WHAT",
            converter = ChoiceConverter.OfAddition.class,
            description = "Ask only what is needed to add to a pantry that is there: product or ingredient.")
    private @Nullable Addition addition;

    public NewCommand(Supplier<BufferedReader> in, Console console) {
        this.in = in;
        this.out = console.out();
        this.err = console.err();
    }

    @Override
    public Integer call() {
        return workbook == null ? ask() : write(new KitchenFile(workbook, spec));
    }

    private int write(KitchenFile file) {
        file.check();
        file.write(KitchenWorkbooks.example());
        out.println(PlainText.line("Written: " + file.file()));
        out.println("Put your own figures in the place of the example's; rows can be deleted. Each head has a note.");
        out.println(PlainText.line("Next: panade blend " + file.file()));
        return ExitStatus.DONE;
    }

    private int ask() {
        var reader = in.get();
        var purpose = purpose();
        var draft = new AnswerDraft(folder, purpose);
        try {
            var dialogue = new Dialogue(reader, out, earlier(reader, draft), draft::keep);
            var beginning = new Interview(
                            dialogue, purpose, pantries(), this::pantry, name -> Files.exists(brief(name)))
                    .hold();
            int status = purpose == Purpose.INGREDIENT ? add(beginning) : write(beginning);
            draft.delete();
            return status;
        } catch (Dialogue.Ended e) {
            err.println("The answers ended before the questions did; nothing was written"
                    + (draft.isKept()
                            ? " but the answers: " + PlainText.line(draft.file().toString())
                                    + ". The same command goes on from there."
                            : "."));
            return ExitStatus.USAGE;
        }
    }

    private Purpose purpose() {
        if (addition == null) {
            return Purpose.KITCHEN;
        }
        if (pantries().isEmpty()) {
            throw UsageErrors.in(spec, "--add: there is no pantry here yet; panade new starts one.");
        }
        return addition == Addition.PRODUCT ? Purpose.PRODUCT : Purpose.INGREDIENT;
    }

    /** Names of the pantries that are there. */
    private List<String> pantries() {
        var sets = folder.resolve("ingredient-sets");
        if (!Files.isDirectory(sets)) {
            return List.of();
        }
        try (var folders = Files.list(sets)) {
            return folders.filter(each -> Files.exists(each.resolve("ingredients.json")))
                    .map(each -> each.getFileName().toString())
                    .filter(name -> Slug.of(name).equals(name))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw UsageErrors.in(spec, sets + " cannot be read.");
        }
    }

    /** Answers of another day, if somebody wants to go on from there. */
    private List<Answer> earlier(BufferedReader reader, AnswerDraft draft) {
        var answers = draft.read();
        if (answers.isEmpty()) {
            return answers;
        }
        var last = answers.get(answers.size() - 1);
        out.println("There are " + answers.size() + " answers from another time, the last to \""
                + PlainText.line(last.question().strip()) + "\".");
        boolean wanted = new Dialogue(reader, out, List.of(), given -> {}).agrees("Go on from there?", "yes");
        return wanted ? answers : List.of();
    }

    private Optional<IngredientSet> pantry(String name) {
        if (!Files.exists(set(name))) {
            return Optional.empty();
        }
        var reading = Documents.text(set(name)) instanceof Reading.Accepted<String> text
                ? Documents.setOf(text.value(), set(name).toString())
                : null;
        if (reading instanceof Reading.Accepted<IngredientSet> accepted) {
            return Optional.of(accepted.value());
        }
        throw UsageErrors.in(
                spec, set(name) + " is there already and cannot be used as it is: panade check tells why.");
    }

    private Path set(String pantry) {
        return folder.resolve("ingredient-sets").resolve(Slug.of(pantry)).resolve("ingredients.json");
    }

    private Path brief(String product) {
        return folder.resolve("constraints").resolve(Slug.of(product) + ".json");
    }

    private int write(Beginning beginning) {
        var set = set(beginning.pantry());
        var brief = brief(beginning.product());
        if (Files.exists(brief)) {
            throw UsageErrors.in(
                    spec, brief + " is already there, and nothing was written. Give the product another name.");
        }
        var written = new ArrayList<Path>();
        var lists = new ArrayList<String>();
        try {
            if (!Files.exists(set) || !beginning.items().isEmpty()) {
                putPantry(beginning, written);
            }
            var up = "../ingredient-sets/" + Slug.of(beginning.pantry()) + "/";
            lists.addAll(lists(set).stream().map(up::concat).toList());
            put(brief, beginning.brief(up + "ingredients.json", lists), written);
        } catch (IOException e) {
            throw UsageErrors.in(spec, "cannot write in " + folder.toAbsolutePath() + ".");
        }
        out.println();
        if (lists.size() > 1) {
            out.println(PlainText.line("These price lists count together; take those that do not out of the brief: "
                    + String.join(", ", lists)));
        }
        tell(beginning, written);
        return checked(brief);
    }

    /** Puts further ingredients into a pantry that is there. */
    private int add(Beginning beginning) {
        var written = new ArrayList<Path>();
        try {
            putPantry(beginning, written);
        } catch (IOException e) {
            throw UsageErrors.in(spec, "cannot write in " + folder.toAbsolutePath() + ".");
        }
        out.println();
        tell(beginning, written);
        out.println("Briefs that name price lists of their own, or under \"only\" what may go in, take nothing new"
                + " until it is named there.");
        return ExitStatus.DONE;
    }

    private void tell(Beginning beginning, List<Path> written) {
        written.forEach(file -> out.println(PlainText.line("Written: " + file)));
        if (beginning.items().stream().anyMatch(item -> !item.source().isEmpty())) {
            out.println("What common ingredients hold, and their allergens, are those of the food as such: read your"
                    + " supplier's papers.");
        }
    }

    private void putPantry(Beginning beginning, List<Path> written) throws IOException {
        var set = set(beginning.pantry());
        var prices = prices(set);
        put(set, Files.exists(set) ? beginning.addedTo(text(set)) : beginning.set(), written);
        put(prices, beginning.prices(before(prices)), written);
    }

    /** The list that new prices are written into: the only one there is, or today's. */
    private static Path prices(Path set) throws IOException {
        var lists = Files.exists(set) ? lists(set) : List.<String>of();
        return set.resolveSibling(lists.size() == 1 ? lists.get(0) : "prices-today.csv");
    }

    /** A price list as it is; refused where that cannot be read, so that nothing of it is lost. */
    private String before(Path prices) throws IOException {
        if (!Files.exists(prices)) {
            return "";
        }
        if (!Documents.check(prices).problems().isEmpty()) {
            throw UsageErrors.in(spec, prices + " cannot be used as it is: panade check tells why.");
        }
        return text(prices);
    }

    private static String text(Path file) throws IOException {
        if (Documents.text(file) instanceof Reading.Accepted<String> text) {
            return text.value();
        }
        throw new IOException(file + " cannot be read");
    }

    /** The pantry's price lists, which count together. */
    private static List<String> lists(Path set) throws IOException {
        try (var files = Files.list(Objects.requireNonNull(set.toAbsolutePath().getParent()))) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.startsWith("prices-") && name.endsWith(".csv"))
                    .sorted()
                    .toList();
        }
    }

    private static void put(Path file, String text, List<Path> written) throws IOException {
        Files.createDirectories(Objects.requireNonNull(file.toAbsolutePath().getParent()));
        WholeFile.write(file, text);
        written.add(file);
    }

    private int checked(Path brief) {
        var reading = Documents.readBrief(brief, Overrides.NONE);
        if (reading instanceof Reading.Rejected<Brief> rejected) {
            return ProblemPrinter.print(rejected.problems(), err);
        }
        out.println(PlainText.line("Next: panade blend " + brief));
        return ExitStatus.DONE;
    }
}
