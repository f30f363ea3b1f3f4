package panade.domain;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import panade.domain.pantry.PropertyWords;

/** Finds the bounds of a brief by what people call them. */
public record NamedBounds(Brief brief) {

    /**
     * The bounds with that name; else those with that path, in the brief itself before the briefs it is based on. More
     * than one where the name does not tell them apart, none where nothing is called so.
     */
    public List<Bound> named(String name) {
        Predicate<Bound> there = bound -> bound.path().equals(name);
        Predicate<Bound> own = bound -> bound.origin().file().equals(brief.file());
        return Stream.<Predicate<Bound>>of(bound -> bound.name().equals(name), there.and(own), there)
                .map(sought -> brief.bounds().stream().filter(sought).toList())
                .filter(found -> !found.isEmpty())
                .findFirst()
                .orElse(List.of());
    }

    /** The bounds that the brief states on a property, by its tagname or an everyday word for it, or on an id. */
    public List<Bound> measuring(String word) {
        var property = PropertyWords.tagname(word).orElse(word);
        return written().filter(bound -> bound.of().name().equals(property)).toList();
    }

    /** The bounds that the brief states for the whole batch. */
    public Stream<Bound> written() {
        return brief.bounds().stream().filter(bound -> bound.kind() == LimitKind.BRIEF);
    }
}
