package panade.cli.command;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import panade.document.syntax.Problem;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.NamedBounds;
import panade.domain.origin.Origin;

/** Finds what an option names in a brief. */
public final class InBrief {
    private InBrief() {}

    /** The bound with that name or path, or the only one of the brief on the property that is meant. */
    static Optional<Bound> bound(Brief brief, String name) {
        var bounds = new NamedBounds(brief);
        var measuring = bounds.measuring(name);
        return bounds.named(name).stream()
                .findFirst()
                .or(() -> measuring.size() == 1 ? Optional.of(measuring.get(0)) : Optional.empty());
    }

    /** The id of an ingredient that may be used and is meant by an id or by a name that only one has. */
    static Optional<String> ingredient(Brief brief, String idOrName) {
        return brief.set().idOf(idOrName).filter(brief.candidates()::contains);
    }

    static Problem noBound(Brief brief, String name) {
        var names = new NamedBounds(brief)
                .written()
                .map(bound -> "\"" + bound.name() + "\"")
                .collect(Collectors.joining(", "));
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
