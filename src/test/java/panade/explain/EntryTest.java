package panade.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import panade.explain.Explanation.Entry;
import panade.testing.SmallKitchen;

/** Where an unused ingredient comes in, and how much of it then; worked out by hand. */
class EntryTest {
    /** Two halves of a batch, each a tenth binder: "fresh" binds as well as "binder" and is dearer. */
    private static final SmallKitchen TWO_HALVES = new SmallKitchen(
            """
            {"id": "water", "values": {}}, {"id": "binder", "kinds": ["gum"], "values": {}},
            {"id": "fresh", "kinds": ["gum"], "values": {}}
            """,
            "water,tap,0.10,kg,\nbinder,north,3.00,kg,\nfresh,south,5.00,kg,\n",
            "{\"stage\": \"first\", \"min\": \"50 %\", \"max\": \"50 %\"}",
            """
            "stages": [
              {"id": "first", "ingredients": ["water", "binder", "fresh"], "bounds": [{"kind": "gum", "min": "10 %"}]},
              {"id": "mix", "ingredients": ["water", "binder", "fresh"], "bounds": [{"kind": "gum", "min": "10 %"}]}],
            """);

    @Test
    void whatComesInTakesAllPlacesWhereItIsCheaperAtOnce() {
        // below 3.00 it is the cheaper gum in both halves: a tenth of each, a tenth of the batch
        var entry = entry(TWO_HALVES, "fresh");
        assertThat(entry.at()).isEqualTo(SmallKitchen.number("3"));
        assertThat(entry.share()).isEqualTo(SmallKitchen.number("0.1"));
        var typed = TWO_HALVES.withPrices("water,tap,0.10,kg,\nbinder,north,3.00,kg,\nfresh,south,2.999999,kg,\n");
        assertThat(typed.blended().blend().shareOf("fresh")).isEqualTo(entry.share());
        // at 5 % less, 2.85, a tenth of a kilogram saves 0.015
        assertThat(entry.saving()).isEqualTo(SmallKitchen.number("0.015"));
    }

    private static Entry entry(SmallKitchen kitchen, String id) {
        return kitchen.blended().explanation().unused().stream()
                .filter(unused -> unused.ingredient().equals(id))
                .map(unused -> Objects.requireNonNull(unused.entry()))
                .findFirst()
                .orElseThrow();
    }
}
