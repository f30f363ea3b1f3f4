package panade.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.document.syntax.TypedField;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.purchase.Offer;
import panade.domain.purchase.TargetPrice;
import panade.quantity.Decimal;
import panade.quantity.Quantity;
import panade.testing.SmallKitchen;

/** A small brief that is based on another, changed in memory; every figure is worked out by hand. */
class ChangedBriefTest {
    @TempDir
    private Path folder;

    private Path file;
    private Brief start;

    @BeforeEach
    void write() throws IOException {
        file = BeanKitchen.write(folder);
        start = accepted(Documents.readBrief(file, Overrides.NONE));
    }

    private static Brief accepted(Reading<Brief> reading) {
        assertThat(reading).isInstanceOf(Reading.Accepted.class);
        return ((Reading.Accepted<Brief>) reading).value();
    }

    private Reading<Brief> with(Changes changes) {
        return new ChangedBrief(file, Overrides.NONE, start).with(changes);
    }

    private Bound bound(Brief brief, String name) {
        return brief.bounds().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private TypedField typed(String bound, String side, String text) {
        var place = bound(start, bound).origin();
        return new TypedField(place.file(), place.pointer(), side, text);
    }

    private static Changes limits(TypedField... typed) {
        return new Changes(null, null, List.of(typed), Map.of(), Set.of());
    }

    private Offer offer(String ingredient, String supplier) {
        return start.offers().stream()
                .filter(each ->
                        each.ingredient().equals(ingredient) && each.supplier().equals(supplier))
                .findFirst()
                .orElseThrow();
    }

    private static BigFraction cost(Brief brief) {
        return SmallKitchen.blended(brief).blend().costPerKg();
    }

    @Test
    void without_changes_it_is_the_brief_as_it_is_written() {
        assertThat(accepted(with(Changes.NONE)).bounds()).isEqualTo(start.bounds());
        // 12 g of protein in 100 g are 60 g of beans, which bring 0.6 g of fat; 4.4 g of oil make it 5 g.
        assertThat(cost(start)).isEqualTo(Decimal.of("1.42"));
    }

    @Test
    void numbers_move_where_they_are_written_in_the_brief_or_in_its_basis() {
        // 70 g of beans and 0.7 g of fat; 9.3 g of oil make it 10 g.
        var brief = accepted(with(limits(typed("protein", "min", "14 %"), typed("fat", "min", "10 g/100g"))));
        assertThat(cost(brief)).isEqualTo(Decimal.of("1.865"));
        assertThat(bound(brief, "fat").max()).isEqualTo(bound(start, "fat").max());
        assertThat(brief.bounds()).hasSameSizeAs(start.bounds());
    }

    @Test
    void a_side_is_added_and_taken_off_and_a_bound_without_sides_is_gone() {
        assertThat(bound(accepted(with(limits(typed("protein", "max", " 13 % ")))), "protein")
                        .max())
                .extracting(Quantity::text)
                .isEqualTo("13 %");
        assertThat(bound(accepted(with(limits(typed("fat", "max", "")))), "fat").max())
                .isNull();
        var off = accepted(with(limits(typed("fat", "max", ""), typed("fat", "min", " "))));
        assertThat(off.bounds()).extracting(Bound::name).containsExactly("protein", "soak share");
        assertThat(cost(off)).isEqualTo(Decimal.of("1.2")); // 60 g of beans and water
        var loose = accepted(with(limits(typed("soak share", "max", ""))));
        assertThat(loose.bounds()).extracting(Bound::name).containsExactly("protein", "fat");
    }

    @Test
    void the_share_of_a_stage_is_a_bound_like_any_other() {
        assertThat(SmallKitchen.blended(accepted(with(limits(typed("soak share", "max", "60 %")))))
                        .blend()
                        .costPerKg())
                .isEqualTo(Decimal.of("1.42"));
        assertThat(bound(accepted(with(limits(typed("soak share", "min", "6.5 kg")))), "soak share")
                        .min())
                .extracting(Quantity::text)
                .isEqualTo("6.5 kg");
    }

    @Test
    void prices_and_stock_are_of_one_offer_each() {
        var north = offer("beans", "North").id();
        var dearer = new Changes(null, null, List.of(), Map.of(north, "2.50/kg"), Set.of());
        assertThat(cost(accepted(with(dearer)))).isEqualTo(Decimal.of("1.72"));
        var tooDear = new Changes(null, null, List.of(), Map.of(north, "$400/100 kg"), Set.of());
        assertThat(cost(accepted(with(tooDear)))).isEqualTo(Decimal.of("2.02")); // from the other one at 3.00
        var out = new Changes(null, null, List.of(), Map.of(), Set.of(north));
        assertThat(cost(accepted(with(out)))).isEqualTo(Decimal.of("2.02"));
        var none = accepted(with(new Changes(
                null,
                null,
                List.of(),
                Map.of(),
                Set.of(north, offer("beans", "South").id()))));
        assertThat(none.candidates()).containsExactly("oil", "water");
    }

    @Test
    void batch_and_target_are_typed_as_well_and_a_target_can_be_given_up() {
        var brief = accepted(with(new Changes("5 lb", "1.20/lb", List.of(), Map.of(), Set.of())));
        assertThat(brief.batch()).extracting(Quantity::text).isEqualTo("5 lb");
        assertThat(brief.target()).isNotNull().extracting(TargetPrice::text).isEqualTo("1.20/lb");
        assertThat(accepted(with(new Changes(null, " ", List.of(), Map.of(), Set.of())))
                        .target())
                .isNull();
    }

    @Test
    void all_that_is_wrong_is_told_at_once_and_at_the_fields() {
        var north = offer("beans", "North").id();
        var reading = with(new Changes(
                "a lot",
                null,
                List.of(typed("protein", "min", "12"), typed("fat", "max", "3 %")),
                Map.of(north, "2.00"),
                Set.of()));
        assertThat(reading).isInstanceOf(Reading.Rejected.class);
        assertThat(((Reading.Rejected<Brief>) reading).problems())
                .extracting(each -> each.origin().file().replace(folder + "/", "")
                        + each.origin().pointer() + ": " + each.what())
                .containsExactlyInAnyOrder(
                        "brief.json/bounds/0/min: \"12\" has no unit, but \"PROCNT\" has one",
                        "base.json/bounds/1/min: The least, \"5 %\", is above the most, \"3 %\"",
                        "--batch: \"a lot\" is not a number with a unit that is known here",
                        ChangedBrief.placeOf(north).file().replace(folder + "/", "")
                                + "/2/beans: \"2.00\" does not say for which weight");
    }

    @Test
    void a_price_is_written_as_it_can_be_typed() {
        assertThat(PriceText.of(Decimal.of("2"))).isEqualTo("2.00/kg");
        assertThat(PriceText.of(Decimal.of("3.1").divide(Decimal.of("0.45359237"))))
                .isEqualTo("3.10/lb");
        assertThat(PriceText.of(BigFraction.ZERO)).isEqualTo("0.00/lb");
        assertThat(PriceText.of(BigFraction.of(10, 3))).isEqualTo("3.333333/kg");
    }
}
