package panade.document.brief;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import panade.document.syntax.Problems;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Measure;
import panade.domain.Measure.Part;
import panade.domain.Use;
import panade.domain.VaryingValue;
import panade.domain.pantry.Property;

/** Checks that every value a bound needs is known, and that nothing is measured per something negative. */
final class ValueChecks {
    private final Brief brief;
    private final Problems problems;
    private final List<Use> uses;

    ValueChecks(Brief brief, Problems problems) {
        this.brief = brief;
        this.problems = problems;
        this.uses = brief.uses();
    }

    void check(BoundReader.Draft draft) {
        var missing = missing(draft.bound());
        if (!missing.isEmpty()) {
            tellMissing(draft.bound(), missing);
        }
        checkSureness(draft.bound(), missing.isEmpty());
        var per = draft.bound().per();
        var origin = draft.perOrigin();
        if (per != null && origin != null && mayBeNegative(per)) {
            problems.add(
                    origin,
                    "\"" + per.name() + "\" could be negative",
                    "Expected something to measure against that cannot fall below zero.");
        }
    }

    private void checkSureness(Bound bound, boolean known) {
        if (bound.sure() == null) {
            return;
        }
        var practice = brief.practice();
        if (practice.perCooked() || !practice.rules().isEmpty()) {
            problems.add(
                    bound.origin(),
                    "\"" + bound.name() + "\" cannot be made sure beside "
                            + (practice.perCooked() ? "a cost per cooked weight" : "rules"),
                    "Expected no " + (bound.isLearned() ? "such bound" : "\"sure\" here") + ", or "
                            + (practice.perCooked()
                                    ? "\"costBasis\": \"raw\"."
                                    : "no \"rules\" and no \"maxIngredients\"."));
        } else if (known && !bound.isLearned() && !varies(bound.of())) {
            problems.add(
                    bound.origin(),
                    "\"" + bound.name() + "\" is to be sure, but nothing that may be used says how it varies",
                    "Expected a standard deviation in the ingredient set, such as \"spread\": {\"PROCNT\": 1.5}.");
        }
    }

    private boolean varies(Measure measure) {
        return VaryingValue.of(brief).stream()
                .anyMatch(value -> brief.uses().stream()
                        .anyMatch(use ->
                                value.gain(measure, use, brief.composition()).signum() != 0));
    }

    /** Missing components by ingredient. */
    private Map<String, Set<String>> missing(Bound bound) {
        var missing = new LinkedHashMap<String, Set<String>>();
        measures(bound).forEach(measure -> measure.parts().forEach(part -> collect(part, missing)));
        return missing;
    }

    private static List<Measure> measures(Bound bound) {
        var measures = new ArrayList<Measure>();
        measures.add(bound.of());
        addIfThere(measures, bound.per());
        return measures;
    }

    private static void addIfThere(List<Measure> measures, @Nullable Measure measure) {
        if (measure != null) {
            measures.add(measure);
        }
    }

    private void collect(Part part, Map<String, Set<String>> missing) {
        for (var use : uses) {
            if (isInReach(part, use)) {
                part.properties().keySet().forEach(property -> collect(use.ingredient(), property, missing));
            }
        }
    }

    private static boolean isInReach(Part part, Use use) {
        var weight = part.ingredients().get(use.ingredient());
        var stage = part.stage();
        return weight != null && weight.signum() != 0 && (stage == null || stage.equals(use.stage()));
    }

    // What lacks in a sum is the part that nobody stated.
    private void collect(String ingredient, String id, Map<String, Set<String>> missing) {
        if (brief.composition().base(ingredient, id).isPresent()) {
            return;
        }
        var property = brief.set().property(id);
        if (property.sum().isEmpty()) {
            missing.computeIfAbsent(ingredient, key -> new LinkedHashSet<>()).add(id);
        } else {
            property.sum().keySet().forEach(part -> collect(ingredient, part, missing));
        }
    }

    private void tellMissing(Bound bound, Map<String, Set<String>> missing) {
        var each = missing.entrySet().stream()
                .map(entry -> String.join(" and ", entry.getValue()) + " of \"" + entry.getKey() + "\"")
                .collect(Collectors.joining(", "));
        var needed = new TreeSet<String>();
        missing.values().forEach(needed::addAll);
        problems.add(
                bound.origin(),
                "The bound \"" + bound.name() + "\" needs values that nobody states: " + each,
                "Expected them in the ingredient set; to count them as 0, write " + assumption(needed) + "."
                        + contradicted(missing.keySet()) + energy(needed));
    }

    /** Laws and tables count energy differently, so nothing follows from the rest by itself. */
    private static String energy(Set<String> needed) {
        return needed.contains("ENERC")
                ? " Energy may be a sum of the set's own: \"traits\": {\"ENERC\": {\"sum\": {\"PROCNT\": 4, \"FAT\": 9, \"CHOAVL\":"
                        + " 4, \"FIBTG\": 2}}}."
                : "";
    }

    /** Where "others" would have said it, had the ingredient not stated something that cannot be without it. */
    private String contradicted(Set<String> ingredients) {
        boolean any =
                ingredients.stream().anyMatch(id -> brief.set().ingredient(id).othersAreZero());
        return any ? " (\"others\": 0 does not say so where a part is stated: fat where there is saturated fat.)" : "";
    }

    private String assumption(Set<String> needed) {
        var assumed = needed.stream().map(id -> "\"" + id + "\": 0").collect(Collectors.joining(", "));
        boolean onlyTraits = needed.stream().map(brief.set()::property).noneMatch(Property::component);
        var trait = onlyTraits ? " in the brief, or \"absent\": 0 on the trait" : " in the brief";
        return "\"assume\": {" + assumed + "}" + trait;
    }

    private boolean mayBeNegative(Measure per) {
        return uses.stream()
                .filter(use -> per.isKnown(use, brief.composition()))
                .anyMatch(use -> per.perKg(use, brief.composition()).signum() < 0);
    }
}
