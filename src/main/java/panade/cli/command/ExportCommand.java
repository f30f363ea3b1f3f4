package panade.cli.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import panade.assemble.RemarkLines;
import panade.cli.frame.BriefCommand;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.KitchenFile;
import panade.cli.frame.Version;
import panade.document.KitchenWorkbooks;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.export.ModelExport;
import panade.export.ResultJson;
import panade.file.WholeFile;
import panade.render.PlainText;
import panade.result.ModelResult;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Hands the model to another solver, or the whole kitchen to a spreadsheet program. */
@Command(
        name = "export",
        description =
                "Give the model to another solver, under the brief's own names, or write the kitchen as a workbook.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {
            "",
            "Example: panade export constraints/dumpling-filling.json --lp filling.lp",
            "The objective is money for 1000 kg. Without a file the model goes to standard output."
        })
public final class ExportCommand extends BriefCommand {
    private static final String NO_FILE = "";

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

        @Option(
                names = "--xlsx",
                paramLabel = "FILE",
                description = "Write the whole kitchen as a workbook, which every command reads as a brief.")
        private @Nullable Path xlsx;
    }

    public ExportCommand(Console console) {
        super(console);
    }

    @Override
    protected int work() {
        return format.xlsx == null ? super.work() : kitchen(new KitchenFile(format.xlsx, spec()));
    }

    private int kitchen(KitchenFile file) {
        if (output != null || !overrides().equals(Overrides.NONE)) {
            throw usage("--xlsx writes the kitchen as it stands: expected no other file and nothing that changes it.");
        }
        file.check();
        var reading = KitchenWorkbooks.of(file());
        if (reading instanceof Reading.Rejected<KitchenWorkbooks.Written> rejected) {
            return refuse(rejected.problems());
        }
        var written = ((Reading.Accepted<KitchenWorkbooks.Written>) reading).value();
        file.write(written.book());
        if (json()) {
            out().print(ResultJson.text(new ModelResult.Kitchen(
                    file.file().toString(), written.notes(), RemarkLines.of(written.remarks()))));
            return ExitStatus.DONE;
        }
        out().println(PlainText.line("Wrote " + file.file() + ". Every command reads it as a brief."));
        written.notes().forEach(note -> out().println("Not kept: " + note));
        written.remarks().forEach(remark -> out().println("Remark: " + remark.line()));
        return ExitStatus.DONE;
    }

    @Override
    protected boolean knowsCooked() {
        return false;
    }

    @Override
    protected int answer(Brief brief) {
        var file = target();
        var replaceable = format.mps != null ? Replaceable.MPS : Replaceable.LP;
        if (file != null && replaceable.wouldBeLost(file)) {
            throw usage(replaceable.refusal(file));
        }
        var model = ModelExport.of(brief);
        var text = format.mps != null ? model.mps() : model.lp();
        if (file == null) {
            out().print(text);
            answers().tellAside();
            brief.remarks().forEach(remark -> err().println(PlainText.message("Remark: " + remark.line())));
            return ExitStatus.DONE;
        }
        try {
            WholeFile.write(file, text);
        } catch (IOException e) {
            throw usage("The model could not be written to " + file
                    + ". Expected a file in a folder that is there and may be written to.");
        }
        return told(brief, model, file);
    }

    private @Nullable Path target() {
        var named = format.mps != null ? format.mps : Objects.requireNonNull(format.lp);
        if (!named.equals(NO_FILE) && output != null) {
            throw usage("Two files are named: expected one of them.");
        }
        return named.equals(NO_FILE) ? output : Path.of(named);
    }

    private int told(Brief brief, ModelExport model, Path file) {
        answers()
                .printForMachines(() -> new ModelResult(
                        model.columnCount(), model.rowCount(), model.wholeCount(), RemarkLines.of(brief.remarks())));
        if (!json()) {
            out().println("Wrote " + PlainText.line(file.toString()) + ": " + model.columnCount() + " columns"
                    + (model.wholeCount() == 0 ? "" : ", " + model.wholeCount() + " of them whole numbers,")
                    + " and "
                    + model.rowCount() + " rows. Its optimum is the least cost of 1000 kg.");
            brief.remarks().forEach(remark -> out().println("Remark: " + remark.line()));
            answers().tellUnder();
        }
        return ExitStatus.DONE;
    }
}
