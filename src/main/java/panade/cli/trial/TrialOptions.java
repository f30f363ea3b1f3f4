package panade.cli.trial;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import panade.assemble.trial.TrialForms;
import panade.cli.frame.UsageErrors;
import panade.document.Documents;
import panade.document.syntax.Reading;
import panade.domain.trial.TrialSet;
import panade.result.BatchResult;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Says that a batch is a trial, so that its sheet asks for the figures that are taken of all trials. */
public final class TrialOptions {
    @Spec(Spec.Target.MIXEE)
    private @Nullable CommandSpec spec;

    @Option(
            names = "--trial",
            paramLabel = "ID",
            description = "The batch is a trial of this name: the sheet has a line for each figure to take. With --xlsx"
                    + " also sheets that panade fit --table takes in when they are filled.")
    private @Nullable String id;

    @Option(
            names = "--trials",
            paramLabel = "FILE",
            description = "The trials so far, which say what is measured and who tastes.")
    private @Nullable Path trials;

    /** Refuses one option without the other. */
    public void check() {
        if ((id == null) != (trials == null) || (id != null && id.isBlank())) {
            throw UsageErrors.in(
                    spec, "--trial and --trials go together, such as --trial T13 --trials trials-filling.json.");
        }
    }

    /** What is filled in for the trial; empty where the batch is none. */
    public Reading<Optional<BatchResult.Trial>> form() {
        var name = id;
        if (name == null) {
            return new Reading.Accepted<>(Optional.empty());
        }
        var reading = Documents.readTrials(Objects.requireNonNull(trials));
        if (reading instanceof Reading.Rejected<TrialSet> rejected) {
            return new Reading.Rejected<>(rejected.problems());
        }
        var set = ((Reading.Accepted<TrialSet>) reading).value();
        if (set.trials().stream().anyMatch(trial -> trial.id().equals(name))) {
            throw UsageErrors.in(spec, "--trial " + name + ": a trial of that name is there already.");
        }
        return new Reading.Accepted<>(Optional.of(TrialForms.of(name, set)));
    }
}
