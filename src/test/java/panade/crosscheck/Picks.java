package panade.crosscheck;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** The selectors that a pantry offers. */
record Picks(Map<String, RawIngredient> pantry, List<RawUse> uses) {
    /** Milligrams per 100 g as kilograms per kilogram. */
    private static final int MILLIGRAMS = 100_000;

    Pick ingredient(String id) {
        return new Pick(
                "\"ingredient\": \"" + id + "\"",
                form(use -> one(use.ingredient().equals(id))));
    }

    Pick anyOf(List<String> ids) {
        var json = ids.stream().map(id -> "\"" + id + "\"").collect(joining(", ", "\"ingredient\": [", "]"));
        return new Pick(json, form(use -> one(ids.contains(use.ingredient()))));
    }

    Pick weighted(String one, String other) {
        var json = "\"ingredient\": {\"" + one + "\": 1, \"" + other + "\": 2.5}";
        return new Pick(json, form(use -> weight(use.ingredient(), one, other)));
    }

    private static BigFraction weight(String id, String one, String other) {
        return id.equals(one) ? BigFraction.ONE : id.equals(other) ? BigFraction.of(5, 2) : BigFraction.ZERO;
    }

    Pick kind(String kind) {
        return new Pick(
                "\"kind\": \"" + kind + "\"",
                form(use -> one(pantry.get(use.ingredient()).kinds().contains(kind))));
    }

    /** Either of two kinds; what has both counts once. */
    Pick eitherKind(String one, String other) {
        return new Pick(
                "\"kind\": [\"" + one + "\", \"" + other + "\"]",
                form(use -> one(pantry.get(use.ingredient()).kinds().stream()
                        .anyMatch(kind -> kind.equals(one) || kind.equals(other)))));
    }

    Pick stage(String stage) {
        return new Pick(
                "\"stage\": \"" + stage + "\"", form(use -> one(use.stage().equals(stage))));
    }

    Pick property(String property) {
        return new Pick("\"property\": \"" + property + "\"", values(property));
    }

    Pick fatAndProtein() {
        return new Pick("\"property\": [\"FAT\", \"PROCNT\"]", Exact.sum(List.of(values("FAT"), values("PROCNT"))));
    }

    private List<BigFraction> values(String property) {
        int divisor =
                property.equals("NA") ? MILLIGRAMS : List.of("bite", "tone").contains(property) ? 1 : 100;
        return form(use ->
                Exact.of(pantry.get(use.ingredient()).values().get(property)).divide(divisor));
    }

    private List<BigFraction> form(Function<RawUse, BigFraction> ofUse) {
        return uses.stream().map(ofUse).toList();
    }

    private static BigFraction one(boolean counts) {
        return counts ? BigFraction.ONE : BigFraction.ZERO;
    }
}
