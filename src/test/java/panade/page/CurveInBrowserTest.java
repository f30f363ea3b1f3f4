package panade.page;

import static org.assertj.core.api.Assertions.assertThat;
import static panade.page.JsonFigures.list;
import static panade.page.JsonFigures.money;
import static panade.page.JsonFigures.number;
import static panade.page.JsonFigures.significant;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;
import panade.page.Browser.View;
import tools.jackson.databind.JsonNode;

/** What a curve on the page shows and tells, in a real browser. */
class CurveInBrowserTest {
    private static Browser browser;

    @BeforeAll
    static void open() {
        browser = Browser.open();
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    private static JsonNode visit(State state) {
        var written = state.written();
        browser.visit(written.page(), View.DESK);
        return written.json();
    }

    /** Dearest by its rate times its number, worked out from the result for machines. */
    private static List<JsonNode> dearestBounds(JsonNode json) {
        return list(json, "bounds").stream()
                .filter(bound -> !bound.get("binding").isNull())
                .sorted(Comparator.comparing(CurveInBrowserTest::worth).reversed())
                .limit(2)
                .toList();
    }

    private static BigDecimal worth(JsonNode bound) {
        var price = bound.get("shadowPrice");
        var rate = price.get(price.get("whenRaised").isNull() ? "whenLowered" : "whenRaised");
        return rate.isNull()
                ? BigDecimal.ZERO
                : rate.decimalValue().multiply(touched(bound)).abs();
    }

    private static BigDecimal touched(JsonNode bound) {
        return number(bound, bound.get("binding").asString());
    }

    @Test
    void the_curves_are_of_the_dearest_ingredient_and_the_two_dearest_bounds() {
        var json = visit(State.OPTIMAL);
        var dearest = list(json, "blend").stream()
                .max(Comparator.comparing(line -> number(line, "costShare")))
                .orElseThrow();
        var titles = new ArrayList<>(List.of("The price of "
                + State.ingredientNamed(dearest.get("ingredient").asString())));
        dearestBounds(json)
                .forEach(bound -> titles.add(capital(bound.get("name").asString())));
        assertThat(browser.texts(".curve h3")).isEqualTo(titles);
    }

    private static String capital(String name) {
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void a_curve_has_the_points_that_trace_proves(int place) {
        var bound = dearestBounds(visit(State.OPTIMAL)).get(place);
        var curve = "#curve-" + (place + 2) + " ";
        assertThat(browser.text(curve + "h3"))
                .isEqualTo(capital(bound.get("name").asString()));
        var traced = traced(bound);
        assertThat(browser.texts(curve + "tbody th"))
                .hasSizeGreaterThan(2)
                .containsExactlyElementsOf(list(traced, "points").stream()
                        .map(point -> significant(number(point, "at"), 5))
                        .toList());
        assertThat(browser.texts(curve + "tbody td:nth-of-type(1)"))
                .containsExactlyElementsOf(list(traced, "points").stream()
                        .map(point -> money(number(point, "costPerKg")))
                        .toList());
    }

    /** What is proved of a bound from a fifth below its number to a fifth above. */
    private static JsonNode traced(JsonNode bound) {
        var unit = bound.get("unit").asString();
        var now = touched(bound);
        var words = new ArrayList<>(List.of("trace", "constraints/dumpling-filling.json", "--json"));
        words.addAll(List.of("--bound", bound.get("name").asString()));
        words.addAll(List.of("--from", now.multiply(new BigDecimal("0.8")).toPlainString() + unit));
        words.addAll(List.of("--to", now.multiply(new BigDecimal("1.2")).toPlainString() + unit));
        return State.json(words);
    }

    @Test
    void pointing_at_a_curve_tells_the_blend_there() {
        var bound = dearestBounds(visit(State.OPTIMAL)).get(1);
        var now = significant(touched(bound), 4) + " " + bound.get("unit").asString();
        var before = browser.text("#curve-3 .readout");
        var box = browser.driver().findElement(By.cssSelector("#curve-3 .u-over"));
        browser.run("arguments[0].scrollIntoView({block: 'center'})", box);
        new Actions(browser.driver())
                .moveToElement(box, box.getSize().getWidth() / 2 - 4, 0)
                .perform();
        var after = browser.text("#curve-3 .readout");
        assertThat(before).startsWith("At " + now + ": " + browser.text("#answer .figure"));
        var last = new BigDecimal(browser.text("#curve-3 tbody tr:last-child > th"));
        var there = new BigDecimal(after.split(" ", 3)[1]);
        assertThat(there).isBetween(last.subtract(last.multiply(new BigDecimal("0.01"))), last);
        assertThat(after).startsWith("At ").isNotEqualTo(before).contains("+");
    }

    @Test
    void a_curve_is_walked_along_with_the_keyboard() {
        var bound = dearestBounds(visit(State.OPTIMAL)).get(1);
        var slider = browser.driver().findElement(By.id("curve-3-walk"));
        slider.sendKeys(Keys.END);
        var last = browser.texts("#curve-3 tbody tr:last-child > *");
        assertThat(new BigDecimal(last.get(0)))
                .isEqualByComparingTo(touched(bound).multiply(new BigDecimal("1.2")));
        assertThat(browser.text("#curve-3 .here"))
                .isEqualTo("At " + last.get(0) + " " + bound.get("unit").asString() + ": " + last.get(1) + " USD/lb");
        assertThat(slider.getAttribute("aria-valuetext")).isEqualTo(browser.text("#curve-3 .here"));
    }

    /** 40 % of the mince at 1.00 a kilogram up to its chew of 7, 40 % of the powder at 3.00 above. */
    @Test
    void where_the_cost_jumps_both_costs_are_told_and_none_between() {
        visit(State.JUMP);
        var mince = money(new BigDecimal("0.4")) + " USD/lb";
        var powder = money(new BigDecimal("1.2")) + " USD/lb";
        assertThat(browser.texts("#curve-1 h3, #curve-2 h3")).containsExactly("Chew", "Not tough");
        assertThat(browser.text("#curve-1 .here")).isEqualTo("At 7: " + mince + "; just above 7: " + powder);
        assertThat(browser.text("#curve-2 .here")).isEqualTo("At 7: " + mince + "; just below 7: " + powder);
        assertThat(costsOnTheWay("curve-1")).containsExactly(mince, mince + "; just above 7: " + powder, powder);
        assertThat(costsOnTheWay("curve-2")).containsExactly(powder, mince + "; just below 7: " + powder, mince);
    }

    /** What is told from one end to the other, each once in a row, without the places. */
    @SuppressWarnings("unchecked")
    private static List<String> costsOnTheWay(String curve) {
        return (List<String>) browser.run(
                "const slider = document.getElementById(arguments[0] + '-walk'), told = [];"
                        + "for (let step = 0; step <= 1000; step++) {"
                        + "slider.value = step; slider.dispatchEvent(new Event('input'));"
                        + "const words = document.querySelector('#' + arguments[0] + ' .here').textContent.replace(/^At [^:]*: /, '');"
                        + "if (told[told.length - 1] !== words) told.push(words); }"
                        + "return told;",
                curve);
    }

    @Test
    void where_the_cost_jumps_no_line_is_drawn_from_one_cost_to_the_other() {
        visit(State.JUMP);
        browser.run("document.querySelector('#curve-1 .u-over').scrollIntoView({block: 'center'})");
        // How high the curve's colour reaches, and in how many columns it is halfway up: the step itself is one or two.
        var drawn = (List<?>) browser.run("const canvas = document.querySelector('#curve-1 canvas');"
                + "const { data, width, height } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);"
                + "const found = []; for (let i = 0; i < data.length; i += 4) {"
                + "if (data[i + 3] > 100 && data[i] < 60 && Math.abs(data[i + 1] - 114) < 40 && data[i + 2] > 140) {"
                + "found.push([i / 4 % width, Math.floor(i / 4 / width)]); } }"
                + "const ys = found.map(([, y]) => y), top = Math.min(...ys), reach = Math.max(...ys) - top;"
                + "const halfway = found.filter(([, y]) => y > top + reach * .3 && y < top + reach * .7);"
                + "return [reach, new Set(halfway.map(([x]) => x)).size];");
        assertThat((Long) drawn.get(0)).isGreaterThan(50);
        assertThat((Long) drawn.get(1)).isLessThan(8);
    }
}
