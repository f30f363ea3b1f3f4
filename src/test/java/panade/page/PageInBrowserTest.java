package panade.page;

import static org.assertj.core.api.Assertions.assertThat;
import static panade.page.JsonFigures.list;
import static panade.page.JsonFigures.money;
import static panade.page.JsonFigures.number;
import static panade.page.JsonFigures.significant;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import panade.page.Browser.View;
import tools.jackson.databind.JsonNode;

/** What somebody who opens the page sees, in a real browser. */
class PageInBrowserTest {
    /** Two sheets of paper, printed on both sides. */
    private static final int SIDES = 4;

    private static final Set<State> NO_BLEND = Set.of(State.INFEASIBLE, State.LISTS_WITHOUT_BLEND);

    private static final Set<State> LIKE_ANOTHER =
            Set.of(State.TARGET, State.COOKED, State.JUMP, State.LISTS_WITHOUT_BLEND);

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

    @ParameterizedTest
    @EnumSource(names = {"OPTIMAL", "TARGET", "RULES", "LISTS", "HOSTILE"})
    void the_headline_is_the_proved_cost(State state) {
        var json = visit(state);
        var figure = money(number(json.get("cost"), "perKg")) + " USD/lb";
        assertThat(browser.texts("#answer .figure")).containsExactly(figure);
        assertThat(browser.text("#answer")).contains("Proved:");
        assertThat(browser.texts("#answer .figure, #answer p").size()).isGreaterThan(2);
    }

    @Test
    void a_target_that_is_missed_says_by_how_much() {
        var json = visit(State.TARGET);
        var by = number(json.get("cost"), "perKg").multiply(JsonFigures.POUND).subtract(new BigDecimal("1.10"));
        assertThat(browser.text("#answer"))
                .contains("Target 1.10/lb: missed by " + by.setScale(4, RoundingMode.HALF_EVEN) + " USD/lb.");
    }

    @Test
    void a_cost_per_cooked_pound_is_told_as_such_and_has_no_curves() {
        var json = visit(State.COOKED);
        assertThat(browser.text("#answer .figure"))
                .isEqualTo(money(number(json.get("cost"), "perKg")) + " USD per cooked lb");
        assertThat(browser.texts(".curve")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(names = {"OPTIMAL", "RULES", "LISTS", "HOSTILE"})
    void every_line_of_the_blend_is_there_with_its_weight(State state) {
        var json = visit(state);
        var grams = list(json, "blend").stream()
                .map(line -> number(line, "grams"))
                .map(PageInBrowserTest::grams)
                .toList();
        assertThat(browser.texts(".stage tbody td:nth-of-type(1)"))
                .hasSizeGreaterThan(2)
                .containsExactlyElementsOf(grams);
    }

    private static String grams(BigDecimal grams) {
        int places = grams.compareTo(BigDecimal.valueOf(100)) >= 0 ? 0 : grams.compareTo(BigDecimal.TEN) >= 0 ? 1 : 2;
        return grams.setScale(places, RoundingMode.HALF_EVEN).toPlainString();
    }

    @ParameterizedTest
    @EnumSource(names = {"OPTIMAL", "RULES", "LISTS", "HOSTILE"})
    void every_bound_shows_its_value_between_its_floor_and_its_ceiling(State state) {
        var json = visit(state);
        var expected = list(json, "bounds").stream()
                .filter(bound -> !Set.of("ceiling", "availability")
                        .contains(bound.get("kind").asString()))
                .map(bound -> String.join("|", title(bound), value(bound), limit(bound, "min"), limit(bound, "max")))
                .toList();
        var shown = rows();
        assertThat(expected).hasSizeGreaterThan(5);
        assertThat(shown).containsAll(expected);
    }

    /**
     * What people read: the name, in which a rule's floor and a ceiling call an ingredient by its name and not its id.
     */
    private static String title(JsonNode bound) {
        var name = bound.get("name").asString().strip().replaceAll("\\s+", " ");
        int end = name.indexOf(" when used, min ");
        return switch (bound.get("kind").asString()) {
            case "rule" -> State.ingredientNamed(name.substring(0, end)) + name.substring(end);
            case "ceiling" ->
                State.ingredientNamed(name.substring(0, name.indexOf(" maxUse"))) + ", most that may be used";
            default -> name;
        };
    }

    private static List<String> rows() {
        var names = browser.texts(".corridors tbody th");
        var values = browser.texts(".corridors tbody .value");
        var floors = browser.texts(".corridors tbody .floor");
        var ceilings = browser.texts(".corridors tbody .ceiling");
        var rows = new ArrayList<String>();
        for (int i = 0; i < names.size(); i++) {
            rows.add(String.join("|", names.get(i), values.get(i), floors.get(i), ceilings.get(i)));
        }
        return rows;
    }

    private static String value(JsonNode bound) {
        var unit = bound.get("unit").isNull() ? "" : bound.get("unit").asString();
        var value = bound.get("value").isNull() ? "none" : significant(number(bound, "value"), 4);
        return (value + " " + unit).strip();
    }

    private static String limit(JsonNode bound, String side) {
        return bound.get(side).isNull() ? "" : significant(number(bound, side), 5);
    }

    @ParameterizedTest
    @EnumSource(names = {"OPTIMAL", "RULES", "LISTS", "HOSTILE"})
    void a_mark_touches_a_wall_exactly_where_the_bound_binds(State state) {
        var json = visit(state);
        var binding = list(json, "bounds").stream()
                .filter(bound ->
                        !bound.get("binding").isNull() && !bound.get("value").isNull())
                .map(PageInBrowserTest::title)
                .toList();
        assertThat(binding).isNotEmpty();
        assertThat(browser.texts("tr:has(.touching) > th")).containsExactlyInAnyOrderElementsOf(binding);
        assertThat(browser.run("return [...document.querySelectorAll('.touching')].every(mark => {"
                        + "const at = mark.getAttribute('cx');"
                        + "return [...mark.parentNode.querySelectorAll('.wall')].some(w => w.getAttribute('x') === at);"
                        + "})"))
                .isEqualTo(true);
    }

    @Test
    void the_draft_of_the_label_is_the_one_that_panel_prints() {
        visit(State.OPTIMAL);
        var panel = State.json("panel constraints/dumpling-filling.json --json");
        var names = list(panel, "rows").stream()
                .map(row -> row.get("name").asString())
                .toList();
        assertThat(browser.texts("#panel table:first-of-type tbody td:first-child"))
                .hasSizeGreaterThan(5)
                .startsWith(names.toArray(String[]::new));
        assertThat(browser.text("#panel"))
                .contains(panel.get("statement").get("text").asString());
    }

    @ParameterizedTest
    @EnumSource(names = {"INFEASIBLE", "LISTS_WITHOUT_BLEND"})
    void where_there_is_no_blend_the_conflict_and_every_cure_are_named(State state) {
        var json = visit(state);
        assertThat(json.get("status").asString()).isEqualTo("infeasible");
        assertThat(browser.text("#answer .figure")).isEqualTo("No blend");
        int members = json.get("conflicts").get(0).size();
        assertThat(browser.texts("#conflict li")).hasSizeGreaterThanOrEqualTo(members);
        var cures = list(json, "cures").stream()
                .map(cure -> money(number(cure, "costPerKg")) + " USD")
                .toList();
        assertThat(cures).isNotEmpty();
        assertThat(browser.texts("#cures tbody td:last-child")).containsExactlyElementsOf(cures);
        assertThat(browser.text("#mind")).contains("may bring an allergen");
    }

    @Test
    void several_lists_are_compared_at_their_proved_costs() {
        visit(State.LISTS);
        var quotes = State.json("quotes constraints/skewer-mince.json" + State.Lists.TWO_MONTHS + " --json");
        var costs = list(quotes, "best").stream()
                .map(best -> money(number(best.get("cost"), "perKg")))
                .toList();
        assertThat(browser.texts("#lists table:first-of-type tbody tr td:nth-child(2)")
                        .subList(0, 2))
                .containsExactlyElementsOf(costs);
        assertThat(browser.text(".facts")).contains("prices: prices-september.csv, the first of 2 lists");
    }

    @Test
    void hostile_names_are_shown_as_they_are_written_and_do_nothing() {
        visit(State.HOSTILE);
        var title = "</title><script>document.title='taken'</script> & \"mince\" <b>";
        assertThat(browser.driver().getTitle()).isEqualTo(title);
        assertThat(browser.text("h1")).isEqualTo(title);
        assertThat(browser.texts(".corridors th")).contains("<img src=x onerror=\"document.title='taken'\">");
        assertThat(browser.texts(".corridors th")).contains("${7*7} #{7*7} {{7*7}} @template.page()");
        assertThat(browser.text("#sheet")).contains("<a href=\"javascript:alert(1)\">press</a>");
        assertThat(browser.text("#blend")).contains("O'Hara & \"Sons\" <ltd>");
        assertThat(browser.run("return document.querySelectorAll('img, iframe, form, object, embed, base, link,"
                        + " script:not(body > script), style:not(head > style), body a:not([href^=\"#\"])').length"))
                .isEqualTo(0L);
        assertThat(browser.run("return [...document.querySelectorAll('*')].flatMap(e => e.getAttributeNames())"
                        + ".filter(name => /^on/.test(name)).length"))
                .isEqualTo(0L);
    }

    @Test
    void nothing_that_gets_into_the_page_could_run_or_fetch() throws IOException {
        visit(State.OPTIMAL);
        browser.run("const s = document.createElement('script'); s.textContent = 'window.ran = 1';"
                + "document.body.append(s);"
                + "document.body.setAttribute('style', 'opacity: .5');"
                + "document.body.insertAdjacentHTML('beforeend', '<a id=press onclick=\"window.ran = 1\">x</a>');"
                + "document.getElementById('press').click();");
        assertThat(browser.run("return [window.ran === undefined, getComputedStyle(document.body).opacity]"))
                .isEqualTo(List.of(true, "1"));
        assertThat(browser.isFetched(State.OPTIMAL.written().page().resolveSibling("dot.png")))
                .as("a picture beside the page is shown")
                .isFalse();
        assertThat(browser.console()).as("what was refused").hasSizeGreaterThanOrEqualTo(3);
    }

    static Stream<Arguments> viewsOfEveryState() {
        return Stream.of(State.values()).flatMap(state -> views(state).map(view -> Arguments.of(state, view)));
    }

    /** States that are laid out like another are seen twice only, in the views that differ most. */
    private static Stream<View> views(State state) {
        return LIKE_ANOTHER.contains(state) ? Stream.of(View.ALL.get(0), View.ALL.get(3)) : View.ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("viewsOfEveryState")
    void nobody_is_kept_out_and_nothing_is_asked_of_the_network(State state, View view) {
        browser.console();
        browser.requests();
        var page = state.written().page();
        browser.visit(page, view);
        assertThat(browser.requests()).containsExactly(page.toUri().toString());
        browser.run("document.querySelectorAll('details').forEach(d => { d.open = true; })");
        assertThat(browser.barriers()).isEmpty();
        assertThat(browser.console()).isEmpty();
        assertThat(browser.run("return document.documentElement.scrollWidth <= window.innerWidth"))
                .as("nothing runs off the side")
                .isEqualTo(true);
    }

    @ParameterizedTest
    @EnumSource
    void it_prints_on_two_sheets_with_the_batch_sheet_on_a_side_of_its_own(State state) throws IOException {
        visit(state);
        try (var pdf = Loader.loadPDF(browser.printed())) {
            assertThat(pdf.getNumberOfPages()).isBetween(1, SIDES);
            var first = text(pdf, 1);
            assertThat(first).contains(browser.text("#answer .figure"));
            if (!NO_BLEND.contains(state)) {
                assertThat(text(pdf, pdf.getNumberOfPages())).contains("Batch sheet", "Total ");
            }
        }
    }

    private static String text(PDDocument pdf, int page) throws IOException {
        var stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(pdf);
    }
}
