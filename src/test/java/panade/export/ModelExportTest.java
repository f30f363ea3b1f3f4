package panade.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import panade.compile.BriefCompiler;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.Decimal;
import panade.testing.Planners;

/** The exported model, read by other people's programs. */
class ModelExportTest {
    private static final Planner PLANNER = Planners.FULL;
    private static final BigDecimal EQUAL = new BigDecimal("1e-7");

    /** GLPK's presolver lets a row be broken by a thousandth of its unit; that is a gram in the tonne. */
    private static final BigDecimal CLOSE = new BigDecimal("1e-4");

    /** GLPK takes a whole number for one within 1e-5. */
    private static final BigDecimal CLOSE_WITH_SWITCHES = new BigDecimal("2e-2");

    @TempDir
    Path folder;

    static Stream<String> plainBriefs() {
        return Stream.of("dumpling-filling", "skewer-mince", "taco-crumble");
    }

    static Stream<String> briefsWithRules() {
        return Stream.of("dumpling-filling-tidy", "skewer-mince-tidy", "taco-crumble-tidy");
    }

    @ParameterizedTest
    @MethodSource("plainBriefs")
    void glpsol_finds_the_same_least_cost_in_both_formats(String name) throws IOException, InterruptedException {
        assertSame(name, CLOSE);
    }

    @ParameterizedTest
    @MethodSource("briefsWithRules")
    void glpsol_finds_the_same_least_cost_under_rules(String name) throws IOException, InterruptedException {
        assertThat(ModelExport.of(read(name)).wholeCount()).isPositive();
        assertSame(name, CLOSE_WITH_SWITCHES);
    }

    private void assertSame(String name, BigDecimal tolerance) throws IOException, InterruptedException {
        var brief = read(name);
        var proved = leastCost(brief);
        var model = ModelExport.of(brief);
        var mps = Files.writeString(folder.resolve("model.mps"), model.mps());
        assertThat(ForeignSolver.leastCost(mps, "--freemps")).isCloseTo(proved, within(tolerance));
        assertThat(ForeignSolver.leastCost(mps, "--freemps", "--nopresol"))
                .isCloseTo(proved, within(model.wholeCount() == 0 ? EQUAL : tolerance));
        var lp = Files.writeString(folder.resolve("model.lp"), model.lp());
        assertThat(ForeignSolver.leastCost(lp, "--lp")).isCloseTo(proved, within(tolerance));
    }

    @ParameterizedTest
    @MethodSource("plainBriefs")
    void ojalgo_finds_the_same_least_cost(String name) {
        var brief = read(name);
        var mps = ModelExport.of(brief).mps().getBytes(StandardCharsets.US_ASCII);
        var model = ExpressionsBasedModel.parse(new ByteArrayInputStream(mps), ExpressionsBasedModel.FileFormat.MPS);
        var answer = model.minimise();
        assertThat(answer.getState().isOptimal()).isTrue();
        assertThat(BigDecimal.valueOf(answer.getValue())).isCloseTo(leastCost(brief), within(EQUAL));
    }

    /** Each row in the file, divided by one number, is the model's row, to the last digit. */
    @ParameterizedTest
    @MethodSource("plainBriefs")
    void rows_say_exactly_what_the_brief_says(String name) {
        var brief = read(name);
        var compiled = BriefCompiler.compile(brief);
        var thousand = BigFraction.of(ModelExport.BATCH);
        var names = ModelNames.of(compiled, compiled.model());
        var written = coefficients(ModelExport.of(brief).mps());
        for (int i = 0; i < compiled.model().rows().size(); i++) {
            var row = compiled.model().rows().get(i);
            var inFile = Objects.requireNonNull(written.get(names.rows().get(i)));
            var expected = new HashMap<String, BigFraction>();
            row.form().forEach((j, value) -> expected.put(names.columns().get(j), value));
            expected.put("RHS", row.right().multiply(thousand));
            expected.values().removeIf(value -> value.signum() == 0);
            assertThat(inFile.keySet()).isEqualTo(expected.keySet());
            var factors = new HashSet<BigFraction>();
            inFile.forEach((column, value) -> factors.add(value.divide(expected.get(column))));
            assertThat(factors).hasSize(1).allMatch(factor -> factor.signum() > 0);
        }
    }

    /** By row, then by column, from the lines with three fields. */
    private static Map<String, Map<String, BigFraction>> coefficients(String mps) {
        var written = new HashMap<String, Map<String, BigFraction>>();
        mps.lines()
                .filter(line -> line.startsWith(" "))
                .map(line -> line.trim().split(" "))
                .filter(words -> words.length == 3 && !words[1].startsWith("'") && !words[0].equals("PL"))
                .forEach(words -> written.computeIfAbsent(words[1], row -> new HashMap<>())
                        .put(words[0], Decimal.of(words[2])));
        return written;
    }

    @Test
    void names_are_the_briefs_own() {
        var lp = ModelExport.of(read("dumpling-filling")).lp();
        assertThat(lp)
                .contains("methylcellulose.emulsion.Gullbeck_Dry_Goods")
                .contains(" sodium.max:")
                .contains("\\ row fat_like_an_80_20_grind.min: fat like an 80/20 grind.min")
                .contains("USD for it");
        assertThat(lp.lines()).allMatch(line -> line.startsWith("\\") || line.length() <= 255);
    }

    @Test
    void names_that_a_reader_would_stumble_over_are_spelled_differently() {
        assertThat(Stream.of("cr\u00e8me fra\u00eeche", "7 spice", "e12", "free", "a-b", "\u8c46\u8150", "x\ty", "")
                        .map(ModelNames::spelled))
                .containsExactly("creme_fraiche", "n_7_spice", "n_e12", "n_free", "a_b", "_", "x_y", "n_");
    }

    private static Brief read(String name) {
        var reading = Documents.readBrief(
                Path.of("constraints", name + ".json"), new Overrides(List.of(), null, List.of(), null));
        assertThat(reading).isInstanceOf(Reading.Accepted.class);
        return ((Reading.Accepted<Brief>) reading).value();
    }

    private static BigDecimal leastCost(Brief brief) {
        var outcome = PLANNER.answer(brief);
        assertThat(outcome).isInstanceOf(Blended.class);
        return Decimal.round(((Blended) outcome).blend().costPerKg().multiply(ModelExport.BATCH), 12);
    }
}
