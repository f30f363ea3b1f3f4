package panade.cli.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import panade.assemble.setting.SetResults;
import panade.cli.frame.UnsupportedFeatures;
import panade.document.Documents;
import panade.document.setting.Tried;
import panade.document.syntax.Overrides;
import panade.document.syntax.Problem;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.plan.Planner;
import panade.result.setting.SetResult;

/**
 * A brief read once with all price lists to buy from, and once with each alone.
 *
 * @param names of the lists
 * @param each the brief under each list
 * @param pooled the brief under all of them
 */
public record ListedBriefs(List<String> names, List<Brief> each, Brief pooled) {
    /** Reads them, or everything that is wrong with any. */
    static Reading<ListedBriefs> read(Path brief, Overrides overrides, List<Path> lists) {
        return read(other -> Documents.readBrief(brief, other), overrides, lists);
    }

    /** The same of whatever is read by what the command line says. */
    static Reading<ListedBriefs> read(
            Function<Overrides, Reading<Brief>> brief, Overrides overrides, List<Path> lists) {
        var problems = new LinkedHashSet<Problem>();
        var pooled = read(brief, overrides, problems);
        var each = new ArrayList<Brief>();
        for (var list : lists) {
            each.addAll(read(
                    brief, pooled.isEmpty() ? overrides.with(list) : under(list, pooled.get(0), overrides), problems));
        }
        return problems.isEmpty()
                ? new Reading.Accepted<>(new ListedBriefs(names(lists), each, pooled.get(0)))
                : new Reading.Rejected<>(List.copyOf(problems));
    }

    /** What numbers that are tried move under each list, where what is tried fits the brief under all lists. */
    SetResult moved(Planner planner, Overrides overrides, List<Path> lists) {
        var all = new ArrayList<SetResults.Named>();
        for (int i = 0; i < names.size(); i++) {
            if (Documents.readTried(Path.of(pooled.file()), under(lists.get(i), pooled, overrides))
                    instanceof Reading.Accepted<Tried> tried) {
                all.add(new SetResults.Named(names.get(i), tried.value()));
            }
        }
        return SetResults.of(planner, all);
    }

    /** One list need not sell everything that a price is tried for. */
    private static Overrides under(Path list, Brief pooled, Overrides overrides) {
        return overrides.settings().isEmpty()
                ? overrides.with(list)
                : Documents.settable(Path.of(pooled.file()), overrides.with(list));
    }

    /** The brief, or nothing and its problems. */
    private static List<Brief> read(
            Function<Overrides, Reading<Brief>> brief, Overrides overrides, Set<Problem> problems) {
        var reading = brief.apply(overrides);
        if (reading instanceof Reading.Rejected<Brief> rejected) {
            problems.addAll(rejected.problems());
            return List.of();
        }
        var accepted = ((Reading.Accepted<Brief>) reading).value();
        problems.addAll(UnsupportedFeatures.of(accepted));
        return List.of(accepted);
    }

    /** File names without folder and ending; whole paths where that would make two the same. */
    private static List<String> names(List<Path> lists) {
        var shortNames = lists.stream()
                .map(list -> list.getFileName().toString().replaceAll("\\.csv$", ""))
                .toList();
        boolean distinct = shortNames.stream().distinct().count() == shortNames.size();
        return distinct ? shortNames : lists.stream().map(Path::toString).toList();
    }
}
