package panade.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import panade.domain.Brief;
import panade.export.ModelExport;
import panade.assemble.RemarkLines;
import panade.export.ResultJson;
import panade.result.ModelResult;
import panade.file.WholeFile;
import panade.plan.Engines;
import panade.plan.Planner;
import panade.render.PlainText;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Hands the model to another solver. */
@Command(
        name = "export",
        description = "Give the model to another solver, under the brief's own names.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {
            "",
            "Example: panade export constraints/dumpling-filling.json --lp filling.lp",
            "The objective is money for 1000 kg. Without a file the model goes to standard output."
        })
final class ExportCommand implements Callable<Integer> {
    private static final String NO_FILE = "";

    private final PrintWriter out;
    private final PrintWriter err;
    private final Planner planner;

    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final BriefArgument argument = new BriefArgument();

    @Mixin
    private final BriefOptions options = new BriefOptions();

    @ArgGroup(multiplicity = "1")
    private final Format format = new Format();

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "Where to write the model.")
    private @Nullable Path output;

    /** Which format. */
    static final class Format {
        @Option(
                names = "--mps",
                arity = "0..1",
                fallbackValue = NO_FILE,
                paramLabel = "FILE",
                description = "Write free MPS.")
        private @Nullable String mps;

        @Option(
                names = "--lp",
                arity = "0..1",
                fallbackValue = NO_FILE,
                paramLabel = "FILE",
                description = "Write the LP format, which people can read.")
        private @Nullable String lp;
    }

    ExportCommand(PrintWriter out, PrintWriter err, Engines engines) {
        this.out = out;
        this.err = err;
        this.planner = new Planner(engines);
    }

    @Override
    public Integer call() {
        return argument.withRawCost(options.overrides(), planner, err, this::export);
    }

    private int export(Brief brief) {
        var file = file();
        var replaceable = format.mps != null ? Replaceable.MPS : Replaceable.LP;
        if (file != null && replaceable.wouldBeLost(file)) {
            throw UsageErrors.in(spec, replaceable.refusal(file));
        }
        var model = ModelExport.of(brief);
        var text = format.mps != null ? model.mps() : model.lp();
        if (file == null) {
            out.print(text);
            brief.remarks().forEach(remark -> err.println(PlainText.message("Remark: " + remark.line())));
            return ExitStatus.DONE;
        }
        try {
            WholeFile.write(file, text);
        } catch (IOException e) {
            throw UsageErrors.in(
                    spec,
                    "The model could not be written to " + file
                            + ". Expected a file in a folder that is there and may be written to.");
        }
        return told(brief, model, file);
    }

    private @Nullable Path file() {
        var named = format.mps != null ? format.mps : Objects.requireNonNull(format.lp);
        if (!named.equals(NO_FILE) && output != null) {
            throw UsageErrors.in(spec, "Two files are named: expected one of them.");
        }
        return named.equals(NO_FILE) ? output : Path.of(named);
    }

    private int told(Brief brief, ModelExport model, Path file) {
        if (argument.json()) {
            out.print(ResultJson.text(new ModelResult(
                    model.columnCount(), model.rowCount(), model.wholeCount(), RemarkLines.of(brief.remarks()))));
        } else {
            out.println("Wrote " + PlainText.line(file.toString()) + ": " + model.columnCount() + " columns"
                    + (model.wholeCount() == 0 ? "" : ", " + model.wholeCount() + " of them whole numbers,") + " and "
                    + model.rowCount() + " rows. Its optimum is the least cost of 1000 kg.");
            brief.remarks().forEach(remark -> out.println("Remark: " + remark.line()));
        }
        return ExitStatus.DONE;
    }
}
