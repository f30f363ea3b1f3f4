package panade.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import panade.document.Documents;
import panade.document.Overrides;
import panade.document.Reading;
import panade.document.WholeFile;
import panade.domain.Brief;
import panade.intake.Beginning;
import panade.intake.Slug;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Starts a pantry and a brief. */
@Command(
        name = "new",
        description = "Start a set and a brief by answering questions.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade new"})
final class NewCommand implements Callable<Integer> {
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

    NewCommand(Supplier<BufferedReader> in, PrintWriter out, PrintWriter err) {
        this.in = in;
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        try {
            var dialogue = new Dialogue(in.get(), out);
            return write(
                    new Interview(dialogue, name -> Files.exists(set(name)), name -> Files.exists(brief(name))).hold());
        } catch (Dialogue.Ended e) {
            err.println("The answers ended before the questions did; nothing was written.");
            return ExitStatus.USAGE;
        }
    }

    private Path set(String pantry) {
        return folder.resolve("ingredient-sets").resolve(Slug.of(pantry)).resolve("ingredients.json");
    }

    private Path brief(String product) {
        return folder.resolve("constraints").resolve(Slug.of(product) + ".json");
    }

    private int write(Beginning beginning) {
        var kitchen = Slug.of(beginning.pantry());
        var set = set(beginning.pantry());
        var prices = set.resolveSibling("prices-today.csv");
        var brief = brief(beginning.product());
        var there = Stream.of(set, prices, brief).filter(Files::exists).findFirst();
        if (there.isPresent()) {
            throw Slip.in(
                    spec,
                    there.get() + " is already there, and nothing was written. Give the pantry or the product"
                            + " another name, or add to what is there with an editor or panade import.");
        }
        var up = "../ingredient-sets/" + kitchen + "/";
        try {
            put(set, beginning.set());
            put(prices, beginning.prices());
            put(brief, beginning.brief(up + "ingredients.json", up + "prices-today.csv"));
        } catch (IOException e) {
            throw Slip.in(spec, "cannot write in " + folder.toAbsolutePath() + ".");
        }
        out.println();
        Stream.of(set, prices, brief).forEach(file -> out.println("Written: " + file));
        return checked(brief);
    }

    private static void put(Path file, String text) throws IOException {
        Files.createDirectories(Objects.requireNonNull(file.toAbsolutePath().getParent()));
        WholeFile.write(file, text);
    }

    private int checked(Path brief) {
        var reading = Documents.readBrief(brief, Overrides.NONE);
        if (reading instanceof Reading.Rejected<Brief> rejected) {
            return ProblemPrinter.print(rejected.problems(), err);
        }
        out.println("Next: panade blend " + brief);
        return ExitStatus.DONE;
    }
}
