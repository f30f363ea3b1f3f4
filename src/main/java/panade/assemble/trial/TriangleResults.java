package panade.assemble.trial;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.assemble.RemarkLines;
import panade.design.DifferenceTest;
import panade.design.TriangleServing;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.label.Allergens;
import panade.result.trial.TriangleResult;
import panade.result.trial.TriangleResult.Found;
import panade.result.trial.TriangleResult.Outcome;
import panade.result.trial.TriangleResult.Power;
import panade.result.trial.TriangleResult.Serving;

/** Makes the result of {@code triangle}. */
public final class TriangleResults {
    private static final DifferenceTest TEST = DifferenceTest.TRIANGLE;

    /** How many outcomes are told to either side of the one that decides. */
    private static final int AROUND = 3;

    /** Parts of people, in per cent, for which it is told how often they would be found out. */
    private static final List<Integer> PARTS = List.of(20, 30, 40, 50, 75);

    private static final BigFraction OFTEN = BigFraction.of(4, 5);

    private final int tasters;
    private final BigFraction risk;

    private TriangleResults(int tasters, BigFraction risk) {
        this.tasters = tasters;
        this.risk = risk;
    }

    /** What is served as one of the samples. */
    public record Sample(String title, Brief brief, Blend blend) {}

    /**
     * The sheet and what its answers mean.
     *
     * @param tasters from 1 to 300
     * @param right how many were right; null before they have tasted
     * @param same whether both weigh the same
     */
    public static TriangleResult of(
            Sample a, Sample b, boolean same, int tasters, long seed, BigFraction risk, @Nullable Integer right) {
        var made = new TriangleResults(tasters, risk);
        return new TriangleResult(
                a.title(),
                b.title(),
                same,
                tasters,
                seed,
                risk,
                TEST.leastRight(tasters, risk).orElse(null),
                made.outcomes(),
                PARTS.stream().map(made::power).toList(),
                right == null ? null : made.found(right),
                servings(TriangleServing.serve(tasters, seed)),
                List.copyOf(both(Allergens.stated(a.brief(), a.blend()), Allergens.stated(b.brief(), b.blend()))),
                List.copyOf(both(Allergens.notKnown(a.brief(), a.blend()), Allergens.notKnown(b.brief(), b.blend()))),
                RemarkLines.of(a.brief().remarks()));
    }

    private static Set<String> both(Set<String> one, Set<String> other) {
        var both = new TreeSet<>(one);
        both.addAll(other);
        return both;
    }

    private List<Outcome> outcomes() {
        int middle = TEST.leastRight(tasters, risk).orElse(tasters);
        return IntStream.rangeClosed(Math.max(0, middle - AROUND), Math.min(tasters, middle + AROUND))
                .mapToObj(right -> {
                    var p = TEST.p(right, tasters);
                    return new Outcome(right, p, p.compareTo(risk) <= 0);
                })
                .toList();
    }

    private Power power(int part) {
        var tellApart = BigFraction.of(part, 100);
        return new Power(
                tellApart,
                TEST.power(tasters, risk, tellApart),
                TEST.leastTasters(risk, tellApart, OFTEN, TriangleServing.MOST_TASTERS)
                        .orElse(null));
    }

    private Found found(int right) {
        var p = TEST.p(right, tasters);
        return new Found(
                right, p, p.compareTo(risk) <= 0, BigFraction.of(TEST.mostTellApart(right, tasters, risk), 100));
    }

    private static List<Serving> servings(List<TriangleServing> servings) {
        return IntStream.range(0, servings.size())
                .mapToObj(i -> {
                    var serving = servings.get(i);
                    return new Serving(
                            i + 1,
                            serving.codes(),
                            serving.cups().stream().map(Enum::name).toList(),
                            serving.codes().get(serving.odd()));
                })
                .toList();
    }
}
