package panade.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.domain.Side;
import panade.explain.Explanation.Limit;
import panade.plan.Outcome.Blended;
import panade.testing.Planners;

/** A gel of 2 kg in a batch of 10 kg, gum at 8 in water at 1 a kilogram: 200 g of gum are 10 % of it. Data invented. */
class MixedUnitsTest {
    @Test
    void a_weight_beside_a_share_of_a_stage_is_told_as_the_share_it_is(@TempDir Path folder) throws IOException {
        var limit = limit(folder);
        assertThat(limit.unit().symbol()).isEqualTo("%");
        assertThat(limit.value()).isEqualTo(BigFraction.of(10));
        assertThat(limit.min()).isEqualTo(BigFraction.of(10));
        assertThat(limit.max()).isEqualTo(BigFraction.of(50));
        assertThat(limit.touch()).isEqualTo(Side.MIN);
    }

    @Test
    void a_per_cent_more_of_the_stage_costs_what_that_much_gum_costs_over_water(@TempDir Path folder)
            throws IOException {
        // a hundredth of 2 kg are 20 g, .002 of the batch; gum in the place of water costs 7 more: .014
        var price = Objects.requireNonNull(limit(folder).price());
        assertThat(price.whenRaised()).isEqualTo(BigFraction.of(14, 1000));
        assertThat(price.whenLowered()).isEqualTo(BigFraction.of(-14, 1000));
        assertThat(price.from()).isEqualTo(BigFraction.ZERO);
    }

    private static Limit limit(Path folder) throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"title": "gel", "source": "invented", "ingredients": [
                  {"id": "gum", "values": {}, "others": 0, "allergens": []},
                  {"id": "water", "values": {}, "others": 0, "allergens": []},
                  {"id": "bean", "values": {}, "others": 0, "allergens": []}]}
                """);
        Files.writeString(
                folder.resolve("prices.csv"), "ingredient,supplier,price,per\ngum,a,8,kg\nwater,a,1,kg\nbean,a,3,kg\n");
        var file = Files.writeString(folder.resolve("brief.json"), """
                {"title": "gel", "ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD",
                 "batch": "10 kg",
                 "stages": [{"id": "gel", "title": "gel", "ingredients": ["gum", "water"],
                   "share": {"min": "20 %", "max": "20 %"},
                   "bounds": [{"ingredient": "gum", "min": "200 g", "max": "50 %"}]}]}
                """);
        var brief = ((Reading.Accepted<Brief>) Documents.readBrief(file, Overrides.NONE)).value();
        var blended = (Blended) Planners.LINEAR.answer(brief);
        return blended.explanation().limits().stream()
                .filter(limit -> limit.path().equals("/stages/0/bounds/0"))
                .findFirst()
                .orElseThrow();
    }
}
