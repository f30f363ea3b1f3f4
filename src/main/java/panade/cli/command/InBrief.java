package panade.cli.command;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import panade.document.syntax.Problem;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.LimitKind;
import panade.domain.origin.Origin;
import panade.domain.pantry.PropertyWords;

/** Finds what an option names in a brief. */
public final class InBrief {
    private InBrief() {}

    /** The bound with that name or path; a path is looked for in the brief itself before the briefs it is based on. */
    static Optional<Bound> bound(Brief brief, String name) {
        return brief.bounds().stream()
                .filter(bound -> bound.name().equals(name) || bound.path().equals(name))
                .min(Comparator.comparing(bound -> rank(brief, bound, name)))
                .or(() -> measuring(brief, name));
    }

    /** The only bound of the brief on a property, by its tagname or an everyday word for it. */
    private static Optional<Bound> measuring(Brief brief, String word) {
        var property = PropertyWords.tagname(word).orElse(word);
        var found = written(brief)
                .filter(bound -> bound.of().name().equals(property))
                .toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private static Stream<Bound> written(Brief brief) {
        return brief.bounds().stream().filter(bound -> bound.kind() == LimitKind.BRIEF);
    }

    private static int rank(Brief brief, Bound bound, String name) {
        if (bound.name().equals(name)) {
            return 0;
        }
        return bound.origin().file().equals(brief.file()) ? 1 : 2;
    }

    /** The id of an ingredient that may be used and is meant by an id or by a name that only one has. */
    static Optional<String> ingredient(Brief brief, String idOrName) {
        return brief.set().idOf(idOrName).filter(brief.candidates()::contains);
    }

    static Problem noBound(Brief brief, String name) {
        var names = written(brief).map(bound -> "\"" + bound.name() + "\"").collect(Collectors.joining(", "));
        return unknown(
                "--bound",
                "No bound is called \"" + name + "\"",
                name,
                brief.bounds().stream().map(Bound::name).toList(),
                names.isEmpty()
                        ? "The brief has no bounds."
                        : "Expected a name from the brief, such as its bounds: " + names + ".");
    }

    static Problem noIngredient(Brief brief, String id) {
        return unknown(
                "--price",
                "No ingredient that may be used is called \"" + id + "\"",
                id,
                List.copyOf(brief.candidates()),
                "Expected a name from the brief.");
    }

    private static Problem unknown(String option, String what, String name, List<String> valid, String expected) {
        return Problem.unknown(new Origin(option, 0, 0, ""), what, name, valid, expected);
    }
}
