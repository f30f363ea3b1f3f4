package panade.cli.setting;

import java.io.PrintWriter;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import panade.export.ResultJson;
import panade.render.TextRenderer;
import panade.report.ReportDocument;
import panade.report.setting.SetReport;
import panade.result.setting.SetResult;
import panade.result.setting.WithSet;

/** Prints answers for machines or for people, with what numbers that were tried moved. */
public final class Answers {
    private final PrintWriter out;
    private final PrintWriter err;
    private final boolean json;
    private final @Nullable SetResult set;

    public Answers(PrintWriter out, PrintWriter err, boolean json, @Nullable SetResult set) {
        this.out = out;
        this.err = err;
        this.json = json;
        this.set = set;
    }

    /** A result, in words where nobody asks for JSON. */
    public void print(Object result, Supplier<ReportDocument> people) {
        print(() -> result, people);
    }

    /** The same where machines are told something else than people. */
    public void print(Supplier<Object> result, Supplier<ReportDocument> people) {
        if (json) {
            machines(result.get());
        } else {
            var report = people.get();
            out.print(TextRenderer.render(set == null ? report : SetReport.under(report, set)));
        }
    }

    /** A result for machines, where people are told by a message. */
    public void printForMachines(Supplier<Object> result) {
        if (json) {
            machines(result.get());
        }
    }

    private void machines(Object result) {
        out.print(ResultJson.text(set == null ? result : new WithSet(result, set)));
    }

    /** What was moved, as a message beside an answer that is a table or a model. */
    public void tellAside() {
        if (set != null) {
            err.print(TextRenderer.render(SetReport.of(set)));
        }
    }

    /** What was moved, under lines that are no report. */
    public void tellUnder() {
        if (set != null) {
            out.print("\n" + TextRenderer.render(SetReport.of(set)));
        }
    }
}
