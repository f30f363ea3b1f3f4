package panade.page;

import static org.assertj.core.api.Assertions.assertThat;
import static panade.page.JsonFigures.list;
import static panade.page.JsonFigures.money;
import static panade.page.JsonFigures.number;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WindowType;
import panade.page.Browser.View;
import panade.testing.ServedPage;
import tools.jackson.databind.JsonNode;

/** The page of {@code panade open} worked on in a real browser, against what {@code blend --json} says of the same. */
class OpenInBrowserTest {
    private static final String FILLING = "constraints/dumpling-filling.json";
    private static final String PRICES = "ingredient-sets/netherpleat/prices-september.csv";

    private static Browser browser;
    private static Worker cook;
    private static ServedPage filling;

    @TempDir
    private Path folder;

    @BeforeAll
    static void open() {
        browser = Browser.open();
        cook = new Worker(browser);
        filling = ServedPage.of(FILLING);
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
        if (filling != null) {
            filling.close();
        }
    }

    private static String perPound(JsonNode result) {
        return money(number(result.get("cost"), "perKg")) + " USD/lb";
    }

    private static JsonNode blend(String more) {
        return State.json("blend " + FILLING + " --json" + more);
    }

    /** What comes of the demo's brief with some fields in the place of its own. */
    private JsonNode changed(String fields) throws IOException {
        var brief = folder.resolve("changed.json");
        Files.writeString(brief, "{\"basedOn\": \"" + Path.of(FILLING).toAbsolutePath() + "\", " + fields + "}");
        return State.json(List.of("blend", brief.toString(), "--json"));
    }

    @Test
    void it_opens_with_the_proved_cost_and_every_line_of_the_blend() {
        cook.visit(filling.address());
        var json = blend("");
        assertThat(cook.figure()).isEqualTo(perPound(json));
        assertThat(cook.said()).isEqualTo(perPound(json) + ". The same cost as at the start. Proved.");
        assertThat(browser.texts("#blend tbody td:nth-of-type(2)"))
                .containsExactlyInAnyOrderElementsOf(list(json, "blend").stream()
                        .map(line -> percent(number(line, "share")))
                        .toList());
        assertThat(browser.texts("#bounds .worked tbody th"))
                .containsExactlyElementsOf(list(json, "bounds").stream()
                        .filter(bound -> !bound.get("name").asString().endsWith(" maxUse"))
                        .map(bound -> bound.get("name").asString())
                        .toList());
    }

    private static String percent(BigDecimal share) {
        var percent = share.movePointRight(2);
        return percent.compareTo(new BigDecimal("0.1")) < 0
                ? JsonFigures.significant(percent, 2)
                : percent.setScale(2, RoundingMode.HALF_EVEN).toPlainString();
    }

    @Test
    void a_number_that_is_typed_means_what_it_would_mean_in_the_brief() throws IOException {
        cook.visit(filling.address());
        cook.type(cook.fieldOf("protein, least"), "14.5 %");
        var json = changed("\"bounds\": [{\"name\": \"protein\", \"property\": \"PROCNT\", \"min\": \"14.5 %\"}]");
        assertThat(cook.figure()).isEqualTo(perPound(json));
        var more = number(json.get("cost"), "perKg").subtract(number(blend("").get("cost"), "perKg"));
        assertThat(more.signum()).isPositive();
        assertThat(cook.said())
                .isEqualTo(cook.figure() + ". " + money(more) + " USD/lb more than at the start (" + perPound(blend(""))
                        + "). Proved.");
        assertThat(moves()).isEqualTo(moved(blend(""), json));
        assertThat(browser.texts(".was")).filteredOn(text -> !text.isEmpty()).containsExactly("was 14 %");
    }

    /** What the page says went in at the start and goes in now, a line an ingredient. */
    private static List<String> moves() {
        return browser.texts("#moved tbody tr").stream().sorted().toList();
    }

    private static List<String> moved(JsonNode from, JsonNode to) {
        var before = shares(from);
        var after = shares(to);
        return Stream.concat(before.keySet().stream(), after.keySet().stream())
                .distinct()
                .map(id -> new Moved(
                        State.ingredientNamed(id),
                        before.getOrDefault(id, BigDecimal.ZERO),
                        after.getOrDefault(id, BigDecimal.ZERO)))
                .filter(each -> each.change().abs().compareTo(new BigDecimal("1e-5")) >= 0)
                .map(Moved::line)
                .sorted()
                .toList();
    }

    /** An ingredient's shares of two blends. */
    private record Moved(String name, BigDecimal from, BigDecimal to) {
        BigDecimal change() {
            return to.subtract(from);
        }

        String line() {
            var sign = change().signum() < 0 ? "\u2212" : "+";
            return name + " " + told(from) + " " + told(to) + " " + sign + percent(change().abs());
        }

        private static String told(BigDecimal share) {
            return share.signum() == 0 ? "none" : percent(share);
        }
    }

    private static Map<String, BigDecimal> shares(JsonNode result) {
        return list(result, "blend").stream()
                .collect(Collectors.toMap(
                        line -> line.get("ingredient").asString(), line -> number(line, "share"), BigDecimal::add));
    }

    @Test
    void prices_stock_batch_and_target_mean_what_they_mean_elsewhere() throws IOException {
        cook.visit(filling.address());
        var lines = Files.readAllLines(Path.of(PRICES));
        var row = lines.stream()
                .filter(line -> line.startsWith("soy-isolate,"))
                .findFirst()
                .orElseThrow();
        var cells = row.split(",", -1);
        cells[2] = "9.99";
        cells[3] = "lb";
        var list = folder.resolve("dearer.csv");
        Files.write(
                list,
                lines.stream()
                        .map(line -> line.equals(row) ? String.join(",", cells) : line)
                        .toList());
        cook.type(cook.fieldOf("Price of " + State.ingredientNamed("soy-isolate") + ", " + cells[1]), "9.99/lb");
        assertThat(cook.figure())
                .isEqualTo(perPound(blend(" --prices " + list)))
                .isNotEqualTo(perPound(blend("")));
        cook.press("#start");
        assertThat(cook.figure()).isEqualTo(perPound(blend("")));

        for (var supplier : suppliersOf("wheat-gluten")) {
            cook.press(
                    "input[aria-label='" + State.ingredientNamed("wheat-gluten") + " from " + supplier + " in stock']");
        }
        assertThat(cook.figure())
                .isEqualTo(perPound(blend(" --without wheat-gluten")))
                .isNotEqualTo(perPound(blend("")));
        cook.press("#start");

        cook.type("batch", "5 kg");
        cook.type("target", "1.10/lb");
        var json = blend(" --batch 5kg");
        assertThat(browser.text("#answer"))
                .contains("the 5 kg batch costs "
                        + number(json.get("cost"), "batch").setScale(2, RoundingMode.HALF_EVEN) + " USD")
                .contains("Target 1.10/lb: missed by ");
    }

    private static List<String> suppliersOf(String ingredient) throws IOException {
        return Files.readAllLines(Path.of(PRICES)).stream()
                .filter(line -> line.startsWith(ingredient + ","))
                .map(line -> line.split(",", -1)[1])
                .toList();
    }

    @Test
    void what_was_done_can_be_undone_and_done_again_by_keyboard_and_button() {
        cook.visit(filling.address());
        var start = cook.figure();
        var field = cook.fieldOf("fibre, most");
        assertThat(browser.driver().findElement(By.id("undo")).isEnabled()).isFalse();
        cook.type(field, "2.8 %");
        var first = cook.figure();
        assertThat(first).isNotEqualTo(start);
        cook.type(field, "2.6 %");
        var second = cook.figure();
        cook.keys(Keys.chord(Keys.CONTROL, "z"));
        assertThat(cook.figure()).isEqualTo(first);
        assertThat(cook.typed(field)).isEqualTo("2.8 %");
        cook.press("#undo");
        assertThat(cook.figure()).isEqualTo(start);
        assertThat(cook.typed(field)).isEqualTo("6.5 %");
        assertThat(browser.driver().findElement(By.id("undo")).isEnabled()).isFalse();
        cook.press("#redo");
        cook.keys(Keys.chord(Keys.CONTROL, "y"));
        assertThat(cook.figure()).isEqualTo(second);
        assertThat(browser.driver().findElement(By.id("redo")).isEnabled()).isFalse();
        cook.press("#start");
        assertThat(cook.figure()).isEqualTo(start);
        cook.press("#undo");
        assertThat(cook.typed(field)).isEqualTo("2.6 %");
    }

    @Test
    void a_bound_can_be_taken_off_and_one_side_added() throws IOException {
        cook.visit(filling.address());
        var protein = cook.fieldOf("protein, least");
        cook.type(protein, "");
        assertThat(browser.texts("[data-live='" + protein.replace(".min", "") + "-value']"))
                .containsExactly("");
        cook.press("#undo");
        cook.type(protein.replace("min", "max"), "14 %");
        var json = changed(
                "\"bounds\": [{\"name\": \"protein\", \"property\": \"PROCNT\", \"min\": \"14 %\", \"max\": \"14 %\"}]");
        assertThat(cook.figure()).isEqualTo(perPound(json));
        assertThat(browser.text("[data-live='" + protein.replace(".min", "") + "-price']"))
                .startsWith("fixed");
    }

    @Test
    void what_cannot_be_read_is_told_beside_its_field_and_what_was_proved_stays() {
        cook.visit(filling.address());
        var start = cook.figure();
        var field = cook.fieldOf("fibre, most");
        cook.type(field, "6,5 %");
        assertThat(cook.fault(field))
                .startsWith("\"6,5 %\" has a unit that is not known here")
                .endsWith("Write it as \"6.5 %\".");
        assertThat(cook.field(field).getDomAttribute("aria-invalid")).isEqualTo("true");
        assertThat(cook.field(field).getDomAttribute("aria-describedby")).contains(field + "-fault");
        assertThat(cook.said()).startsWith("Not worked out: fibre, most: ");
        assertThat(cook.figure()).isEqualTo(start);
        assertThat(cook.isStale()).isTrue();
        cook.type(field, "6.5 %");
        assertThat(cook.fault(field)).isEmpty();
        assertThat(cook.isStale()).isFalse();
        assertThat(cook.said()).isEqualTo(start + ". The same cost as at the start. Proved.");
    }

    @Test
    void where_there_is_no_blend_a_button_makes_each_change_that_gives_one() {
        try (var page = ServedPage.of("constraints/taco-wish-list.json")) {
            cook.visit(page.address());
            assertThat(cook.figure()).isEqualTo("No blend");
            assertThat(cook.said()).isEqualTo("No blend. Proved: no blend can meet every bound.");
            var json = State.json("blend constraints/taco-wish-list.json --json");
            assertThat(browser.texts("#conflict ul:not(.cures) li"))
                    .hasSize(json.get("conflicts").get(0).size());
            assertThat(browser.texts(".cures li")).hasSize(json.get("cures").size());
            var cost = browser.text(".cures li:has(button) > span");
            cook.press(".cures button");
            assertThat(cook.figure()).isEqualTo(cost);
            assertThat(browser.texts("#conflict")).isEmpty();
            assertThat(browser.driver().switchTo().activeElement().getDomAttribute("id"))
                    .isEqualTo("answer");
            cook.press("#undo");
            assertThat(cook.figure()).isEqualTo("No blend");
        }
    }

    @Test
    void what_is_changed_is_saved_as_a_brief_and_over_another_only_when_asked_twice() throws IOException {
        var brief = folder.resolve("brief.json");
        Files.writeString(brief, "{\"basedOn\": \"" + Path.of(FILLING).toAbsolutePath() + "\"}");
        try (var page = ServedPage.of(brief.toString())) {
            cook.visit(page.address());
            cook.type(cook.fieldOf("fibre, most"), "2.8 %");
            cook.type("batch", "10 lb");
            cook.save("thinner");
            var saved = folder.resolve("thinner.json");
            assertThat(browser.text("#saved")).isEqualTo("Saved as " + saved + ".");
            assertThat(cook.figure()).isEqualTo(perPound(State.json(List.of("blend", saved.toString(), "--json"))));
            cook.save("thinner");
            assertThat(browser.text("#saved")).isEqualTo(saved + " is there already. Save again to write over that.");
            cook.type(cook.fieldOf("fibre, most"), "2.6 %");
            cook.save("thinner");
            assertThat(browser.text("#saved")).contains("is there already");
            cook.save("thinner");
            assertThat(browser.text("#saved")).startsWith("Saved as ");
            assertThat(saved).content().contains("2.6 %");
            cook.save("brief");
            assertThat(browser.text("#saved")).startsWith("This page was opened from a file of that name");
            assertThat(brief).content().doesNotContain("2.6 %");
        }
    }

    @Test
    void two_tabs_do_not_disturb_each_other() {
        cook.visit(filling.address());
        var start = cook.figure();
        cook.type(cook.fieldOf("fibre, most"), "2.8 %");
        var mine = cook.figure();
        var first = browser.driver().getWindowHandle();
        browser.driver().switchTo().newWindow(WindowType.TAB);
        cook.visit(filling.address());
        assertThat(cook.figure()).isEqualTo(start);
        cook.type(cook.fieldOf("protein, least"), "15 %");
        browser.driver().close();
        browser.driver().switchTo().window(first);
        assertThat(cook.figure()).isEqualTo(mine);
        cook.type("batch", "40 lb");
        assertThat(cook.figure()).isEqualTo(mine);
    }

    @Test
    void when_the_program_has_ended_the_page_says_so_and_keeps_what_was_typed() {
        var page = ServedPage.of(FILLING);
        cook.visit(page.address());
        assertThat(page.end()).isZero();
        cook.type("batch", "40 lb");
        assertThat(browser.text("#trouble")).startsWith("The program does not answer");
        assertThat(cook.typed("batch")).isEqualTo("40 lb");
        assertThat(cook.isStale()).isTrue();
    }

    @Test
    void when_a_document_was_changed_the_page_says_so_and_mixes_nothing() throws IOException {
        var brief = folder.resolve("brief.json");
        var text = "{\"basedOn\": \"" + Path.of(FILLING).toAbsolutePath() + "\", \"batch\": \"10 lb\"}";
        Files.writeString(brief, text);
        try (var page = ServedPage.of(brief.toString())) {
            cook.visit(page.address());
            Files.writeString(brief, text.replace("10 lb", "1000 lb"));
            cook.type("target", "1.10/lb");
            assertThat(browser.text("#trouble")).startsWith("A document was changed on disk");
            cook.visit(page.address());
            assertThat(cook.typed("batch")).isEqualTo("1000 lb");
            Files.writeString(brief, "{");
            cook.visit(page.address());
            assertThat(browser.text("main")).contains("This is not JSON");
        }
    }

    @Test
    void hostile_names_are_shown_as_they_are_written_and_do_nothing() {
        try (var page = ServedPage.of("src/test/resources/hostile/brief.json")) {
            browser.console();
            cook.visit(page.address());
            cook.type("b0.min", "<img src=x onerror=\"document.title='taken'\">");
            assertThat(cook.fault("b0.min")).startsWith("\"<img src=x onerror");
            cook.type("b0.min", "17 %");
            assertThat(browser.driver().getTitle())
                    .isEqualTo("</title><script>document.title='taken'</script> & \"mince\" <b>");
            assertThat(browser.texts("#bounds th")).contains("<img src=x onerror=\"document.title='taken'\">");
            assertThat(
                            browser.run(
                                    "return document.querySelectorAll('main img, main script, main a:not(nav a), main style').length"))
                    .isEqualTo(0L);
            assertThat(browser.console()).isEmpty();
        }
    }

    @Test
    void nobody_is_kept_out_and_nothing_is_asked_of_anybody_else() {
        browser.console();
        browser.requests();
        for (var view : View.ALL) {
            browser.visit(filling.address(), view);
            assertBarrierFree(view);
            cook.type(cook.fieldOf("fibre, most"), "x");
            assertBarrierFree(view);
            cook.type(cook.fieldOf("fibre, most"), "2.8 %");
            assertBarrierFree(view);
            cook.type(cook.fieldOf("protein, least"), "60 %");
            assertThat(cook.figure()).isEqualTo("No blend");
            assertBarrierFree(view);
        }
        assertThat(browser.console()).isEmpty();
        assertThat(browser.requests())
                .filteredOn(address -> address.startsWith("http"))
                .isNotEmpty()
                .allMatch(address -> address.startsWith(filling.address().toString()));
    }

    private static void assertBarrierFree(View view) {
        assertThat(browser.barriers()).as("%s", view).isEmpty();
        assertThat(browser.run("return document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .as("what stands out sideways at %s", view)
                .isEqualTo(0L);
    }

    @Test
    void all_of_it_can_be_done_from_the_keyboard() {
        cook.visit(filling.address());
        var order = new ArrayList<String>();
        for (int i = 0; i < 12; i++) {
            browser.driver().switchTo().activeElement().sendKeys(Keys.TAB);
            order.add((String)
                    browser.run("const e = document.activeElement; return e.name || e.id || e.textContent.trim()"));
        }
        assertThat(order.subList(0, 3)).containsExactly("To the answer", "batch", "target");
        assertThat(order).contains("What moved", "Prices and stock", "b0.min");
        assertThat(browser.run(
                        "return [...document.querySelectorAll('main input')].filter(i => i.tabIndex !== 0).length"))
                .isEqualTo(0L);
    }
}
