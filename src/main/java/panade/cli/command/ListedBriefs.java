package panade.cli.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import panade.cli.frame.UnsupportedFeatures;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Problem;
import panade.document.syntax.Reading;
import panade.domain.Brief;

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
        lists.forEach(list -> each.addAll(read(brief, overrides.with(list), problems)));
        return problems.isEmpty()
                ? new Reading.Accepted<>(new ListedBriefs(names(lists), each, pooled.get(0)))
                : new Reading.Rejected<>(List.copyOf(problems));
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
