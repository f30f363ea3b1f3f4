package panade.cost;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Decision;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.Rule;
import panade.domain.origin.Origin;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;

/**
 * The least cost at each number of names on the label, from the cheapest blend's own number down to the last that can
 * be made.
 *
 * @param rungs from the most names to the fewest
 */
public record Ladder(List<Rung> rungs) {
    /**
     * One number of names.
     *
     * @param names how many the label may show at most
     * @param costPerKg of the cheapest blend that the search found, itself exact; impossible where that is proved
     */
    public record Rung(int names, Decision<BigFraction> costPerKg) {}

    /** The ladder under the best blend of a brief; other rules stay. */
    public static Ladder of(Planner planner, Blended best) {
        var rungs = new ArrayList<Rung>();
        int names = names(best.brief(), best.blend());
        rungs.add(new Rung(names, new Decision.Found<>(best.blend().costPerKg())));
        while (names > 1 && rungs.get(rungs.size() - 1).costPerKg() instanceof Decision.Found) {
            names--;
            rungs.add(new Rung(names, cost(planner, limited(best.asked(), names))));
        }
        return new Ladder(List.copyOf(rungs));
    }

    /** What the search finds; where it finds nothing, what can be proved. */
    private static Decision<BigFraction> cost(Planner planner, Brief limited) {
        return planner.cheapestFound(limited)
                .<Decision<BigFraction>>map(Decision.Found::new)
                .orElseGet(() -> planner.cheapest(limited).map(Blend::costPerKg));
    }

    private static int names(Brief brief, Blend blend) {
        return (int) blend.lines().stream()
                .map(line -> brief.set().ingredient(line.use().ingredient()).label())
                .distinct()
                .count();
    }

    private static Brief limited(Brief brief, int names) {
        var rules = new ArrayList<>(brief.practice().rules());
        rules.removeIf(Rule.MostNames.class::isInstance);
        rules.add(new Rule.MostNames(names, "/maxIngredients", new Origin(brief.file(), 1, 1, "/maxIngredients")));
        return brief.withRules(rules);
    }
}
