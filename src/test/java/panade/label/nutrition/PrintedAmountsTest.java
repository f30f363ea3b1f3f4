package panade.label.nutrition;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import panade.quantity.Decimal;

/** Every boundary of the two laws' rounding, each case with its published source in the resource files. */
class PrintedAmountsTest {
    private static final List<Nutrient> US = UsNutrients.with(Energy.US_GENERAL);
    private static final List<Nutrient> EU = EuNutrients.all();

    private static final Map<String, Function<BigFraction, String>> BESIDE_THE_PANEL = Map.of(
            "servings per container",
            UsRounding::servings,
            "serving size",
            grams -> UsRounding.servingGrams(grams.divide(1000)),
            "%DV vitamin/mineral",
            percent -> UsRounding.VITAMIN_PERCENT.print(percent) + "%",
            "sodium (where declared)",
            EuRounding.SODIUM::print);

    @ParameterizedTest(name = "{0}: {1} {2} prints {3}")
    @CsvFileSource(resources = "/label/rounding-us.csv", numLinesToSkip = 1)
    void in_the_united_states(String id, String nutrient, String amount, String printed, String also, String pdcaas) {
        var exact = Decimal.of(amount);
        var corrected = pdcaas == null ? exact : exact.multiply(Decimal.of(pdcaas));
        assertThat(printedUs(nutrient, corrected)).as(id).isIn(lawful(printed, also));
    }

    private static String printedUs(String nutrient, BigFraction amount) {
        var beside = BESIDE_THE_PANEL.get(nutrient);
        if (beside != null) {
            return beside.apply(amount);
        }
        if (nutrient.startsWith("%DV ")) {
            var line = find(US, nutrient.replace("%DV ", "").replace(" (corrected)", ""));
            return UsRounding.percent(line.percent(), amount, Objects.requireNonNull(line.daily()));
        }
        return find(US, nutrient).printing().apply(amount);
    }

    @ParameterizedTest(name = "{0}: {1} {3} {2} prints {4}")
    @CsvFileSource(resources = "/label/rounding-eu.csv", numLinesToSkip = 1)
    void in_the_european_union(String id, String nutrient, String unit, String amount, String printed, String also) {
        var exact = Decimal.of(amount);
        var beside = BESIDE_THE_PANEL.get(nutrient);
        var line = beside == null ? findEu(nutrient, unit).printing() : beside;
        assertThat(line.apply(exact)).as(id).isIn(lawful(printed, also));
    }

    private static Nutrient findEu(String name, String unit) {
        if (name.equals("energy")) {
            return EU.stream()
                    .filter(line -> line.unit().equals(unit))
                    .findFirst()
                    .orElseThrow();
        }
        return EU.stream()
                .filter(line -> line.name().replace("of which ", "").equalsIgnoreCase(name))
                .findFirst()
                .orElseThrow();
    }

    private static Nutrient find(List<Nutrient> lines, String name) {
        return lines.stream()
                .filter(line -> line.name().equalsIgnoreCase(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line " + name));
    }

    private static List<String> lawful(String printed, String also) {
        return Stream.concat(Stream.of(printed), also == null ? Stream.of() : Arrays.stream(also.split("\\|")))
                .toList();
    }

    /** The order of 21 CFR 101.9(c) and (d) and of Regulation (EU) 1169/2011, Annex XV. */
    @Test
    void the_lines_stand_in_the_order_of_the_law() {
        assertThat(US.stream().filter(Nutrient::always).map(Nutrient::name))
                .containsExactly(
                        "Calories",
                        "Total Fat",
                        "Saturated Fat",
                        "Trans Fat",
                        "Cholesterol",
                        "Sodium",
                        "Total Carbohydrate",
                        "Dietary Fiber",
                        "Total Sugars",
                        "Added Sugars",
                        "Protein",
                        "Vitamin D",
                        "Calcium",
                        "Iron",
                        "Potassium");
        assertThat(EU.stream().limit(9).map(Nutrient::name))
                .containsExactly(
                        "energy",
                        "",
                        "fat",
                        "of which saturates",
                        "carbohydrate",
                        "of which sugars",
                        "fibre",
                        "protein",
                        "salt");
    }

    /** 81 FR 33742: Daily Values as of 2016; the old ones, still on many pages, were 65, 2400, 300, 25 and 3500. */
    @Test
    void daily_values_are_those_of_2016() {
        assertThat(Stream.of("Total Fat", "Sodium", "Total Carbohydrate", "Dietary Fiber", "Potassium")
                        .map(name -> find(US, name).daily()))
                .containsExactly(
                        BigFraction.of(78),
                        BigFraction.of(2300),
                        BigFraction.of(275),
                        BigFraction.of(28),
                        BigFraction.of(4700));
    }
}
