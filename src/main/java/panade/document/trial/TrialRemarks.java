package panade.document.trial;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import panade.document.syntax.Problems;
import panade.domain.Brief;
import panade.domain.Use;
import panade.domain.trial.Trial;

/** Tells what trials say that their cook may not have meant. */
record TrialRemarks(Brief brief, Problems problems) {
    void tell(List<Trial> trials) {
        trials.stream()
                .filter(TrialRemarks::measuredNothing)
                .forEach(trial -> problems.remark(
                        trial.origin(), "Nothing was measured on \"" + trial.id() + "\", so it teaches nothing."));
        tellDays(trials);
        tellStages(trials);
    }

    private static boolean measuredNothing(Trial trial) {
        return trial.measured().values().stream().allMatch(List::isEmpty);
    }

    /** Several days, at least one of them with several trials, and nobody says that the day is to be taken out. */
    private void tellDays(List<Trial> trials) {
        var days = trials.stream()
                .filter(trial -> !trial.date().isEmpty())
                .collect(Collectors.groupingBy(Trial::date, LinkedHashMap::new, Collectors.toList()));
        boolean several = days.size() > 1 && days.values().stream().anyMatch(day -> day.size() > 1);
        if (several && trials.stream().allMatch(trial -> trial.block().isEmpty())) {
            problems.remark(
                    trials.get(0).origin(),
                    "These trials were mixed on " + days.size()
                            + " days, and what a day does counts as chance. State \"block\": \"day 1\" and so on for each"
                            + " trial, and it is taken out.");
        }
    }

    private void tellStages(List<Trial> trials) {
        var first = new LinkedHashMap<Use, Trial>();
        trials.forEach(trial -> trial.weighed().kilograms().keySet().stream()
                .filter(use -> !isExpected(use))
                .forEach(use -> first.putIfAbsent(use, trial)));
        first.forEach((use, trial) -> problems.remark(
                trial.origin(),
                "\"" + trial.id() + "\" has \"" + use.ingredient() + "\" in the stage \"" + use.stage()
                        + "\", where the brief does not put it. A lever within that stage counts it there."));
    }

    private boolean isExpected(Use use) {
        return brief.stages().stream()
                .anyMatch(stage ->
                        stage.id().equals(use.stage()) && stage.ingredients().contains(use.ingredient()));
    }
}
