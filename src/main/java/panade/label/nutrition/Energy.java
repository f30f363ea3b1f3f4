package panade.label.nutrition;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.pantry.Composition;
import panade.domain.pantry.Ingredient;

/**
 * Energy as a sum over components: what every ingredient must state, and what counts only where it is stated.
 *
 * @param main protein, fat, carbohydrate and fibre
 * @param minor alcohol, organic acids and polyols; an ingredient that does not state one is taken to bring none, and
 *     the panel says so
 * @param specific whether an ingredient's own factors go before
 */
public record Energy(Content main, Map<String, BigFraction> minor, boolean specific) implements Content {
    /** Kilocalories per gram of protein, carbohydrate with fibre, and fat: 21 CFR 101.9(c)(1)(i)(B). */
    public static final Energy US_GENERAL = new Energy(
            Content.firstOf(
                    Content.sum("PROCNT", "4", "FAT", "9", "CHOCDF", "4"),
                    Content.sum("PROCNT", "4", "FAT", "9", "CHOAVL", "4", "FIBTG", "4")),
            Content.sum("ALC", "7"),
            false);

    /**
     * The same, fibre that does not dissolve left out and fibre that does at 2: 21 CFR 101.9(c)(1)(i)(C). Polyols are
     * counted as carbohydrate.
     */
    static final Energy US_DIGESTIBLE = new Energy(
            Content.firstOf(
                    Content.sum("PROCNT", "4", "FAT", "9", "CHOCDF", "4", "FIBTG", "-4", "FIBSOL", "2"),
                    Content.sum("PROCNT", "4", "FAT", "9", "CHOAVL", "4", "FIBSOL", "2")),
            Content.sum("ALC", "7"),
            false);

    /** An ingredient's own factors where the set gives them, general ones elsewhere: 21 CFR 101.9(c)(1)(i)(A). */
    static final Energy US_SPECIFIC = new Energy(US_GENERAL.main(), US_GENERAL.minor(), true);

    /** Kilojoules: Regulation (EU) 1169/2011, Annex XIV; polyols, in mg, leave the carbohydrate. */
    public static final Energy EU_KILOJOULES = new Energy(
            Content.firstOf(
                    Content.sum("PROCNT", "17", "FAT", "37", "CHOAVL", "17", "FIBTG", "8"),
                    Content.sum("PROCNT", "17", "FAT", "37", "CHOCDF", "17", "FIBTG", "-9")),
            Content.sum("POLYL", "-0.007", "ALC", "29", "OA", "13"),
            false);

    /** Kilocalories, summed on their own, never converted: Annex XIV. */
    public static final Energy EU_KILOCALORIES = new Energy(
            Content.firstOf(
                    Content.sum("PROCNT", "4", "FAT", "9", "CHOAVL", "4", "FIBTG", "2"),
                    Content.sum("PROCNT", "4", "FAT", "9", "CHOCDF", "4", "FIBTG", "-2")),
            Content.sum("POLYL", "-0.0016", "ALC", "7", "OA", "3"),
            false);

    @Override
    public Optional<Map<String, BigFraction>> form(Ingredient ingredient, Composition composition) {
        var own = ingredient.labelling().energyFactors();
        var found = specific && !own.isEmpty() ? own(own, ingredient, composition) : main.form(ingredient, composition);
        return found.map(sum -> withMinor(sum, ingredient, composition));
    }

    private static Optional<Map<String, BigFraction>> own(
            Map<String, BigFraction> factors, Ingredient ingredient, Composition composition) {
        boolean known = factors.keySet().stream()
                .allMatch(
                        tagname -> composition.stated(ingredient.id(), tagname).isPresent());
        return known ? Optional.of(factors) : Optional.empty();
    }

    private Map<String, BigFraction> withMinor(
            Map<String, BigFraction> sum, Ingredient ingredient, Composition composition) {
        var all = new HashMap<>(sum);
        minor.forEach((tagname, factor) -> {
            if (composition.stated(ingredient.id(), tagname).isPresent()) {
                all.putIfAbsent(tagname, factor);
            }
        });
        return all;
    }

    @Override
    public String needs() {
        return main.needs();
    }
}
