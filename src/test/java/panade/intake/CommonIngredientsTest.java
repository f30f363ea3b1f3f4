package panade.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import panade.document.Documents;
import panade.document.syntax.Reading;
import panade.domain.pantry.IngredientSet;
import panade.intake.Beginning.Item;

/** Common ingredients against what their source says of itself. */
class CommonIngredientsTest {
    /** Acetic acid and volatile oil are in none of the proximates. */
    private static final Set<String> ACID_OR_OIL = Set.of("cider vinegar", "black pepper");

    /** Carbohydrate of that table is what is left of 100 g, so that a digit that was copied wrong shows. */
    @Test
    void proximatesOfTheTableAddUpToOneHundredGrams() {
        assertThat(fromTheTable()).hasSizeGreaterThan(30);
        for (var item : fromTheTable()) {
            if (!ACID_OR_OIL.contains(item.name())) {
                var sum = List.of("WATER", "PROCNT", "FAT", "ASH", "CHOCDF").stream()
                        .map(item.values()::get)
                        .map(Objects::requireNonNull)
                        .reduce(BigDecimal.ZERO, BigDecimal::add);
                assertThat(sum)
                        .as(item.name())
                        .isCloseTo(BigDecimal.valueOf(100), Offset.offset(new BigDecimal("0.06")));
            }
        }
    }

    /** Energy by 4, 9 and 4 kcal a gram lies near what specific factors gave, which are lower for fibre and protein. */
    @Test
    void energyFitsProteinFatAndCarbohydrate() {
        for (var item : fromTheTable()) {
            var energy = Objects.requireNonNull(item.values().get("ENERC")).doubleValue();
            var general = 4 * of(item, "PROCNT") + 9 * of(item, "FAT") + 4 * of(item, "CHOCDF");
            assertThat(energy).as(item.name()).isBetween(0.6 * general - 6, 1.06 * general + 18);
        }
    }

    @Test
    void theyAreAnIngredientSetWithoutFaults() throws IOException {
        try (var in = CommonIngredients.class.getResourceAsStream("common-ingredients.json")) {
            var text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            var reading = Documents.setOf(text, "common-ingredients.json");
            assertThat(reading).isInstanceOf(Reading.Accepted.class);
            var set = ((Reading.Accepted<IngredientSet>) reading).value();
            assertThat(set.ingredients().keySet())
                    .containsExactlyInAnyOrderElementsOf(
                            CommonIngredients.all().stream().map(Item::id).toList());
        }
    }

    /** Names are typed with commas between, so none has one; every figure says where it is from. */
    @Test
    void namesCanBeTypedAndSourcesAreTold() {
        assertThat(CommonIngredients.all()).allSatisfy(item -> {
            assertThat(item.name()).doesNotContain(",", ";");
            assertThat(item.source()).containsAnyOf("USDA SR26, NDB ", "from memory");
            assertThat(item.kinds()).isNotEmpty();
        });
    }

    private static double of(Item item, String property) {
        return Objects.requireNonNull(item.values().get(property)).doubleValue();
    }

    private static List<Item> fromTheTable() {
        return CommonIngredients.all().stream()
                .filter(item -> item.source().contains("NDB"))
                .toList();
    }
}
