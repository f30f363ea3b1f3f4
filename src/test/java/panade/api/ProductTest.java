package panade.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import panade.result.NoBlendResult;
import panade.testing.CommandRun;

/** What a Java program gets is what the command line prints. The demo and the small kitchen are invented. */
class ProductTest {
    private static final Path CRUMBLE = Path.of("constraints/taco-crumble.json");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"taco-crumble", "taco-wish-list"})
    void the_json_is_that_of_the_command(String name) {
        var brief = "constraints/" + name + ".json";
        assertThat(Panade.open(Path.of(brief)).orElseThrow().json())
                .isEqualTo(CommandRun.of("blend", brief, "--json").output());
    }

    @Test
    void a_blend_gives_shares_that_add_to_one_and_the_bounds_that_it_meets() {
        var blend = (Answer.Blend) Panade.open(CRUMBLE).orElseThrow().solve();
        assertThat(blend.shares().values().stream().reduce(BigFraction.ZERO, BigFraction::add))
                .isEqualTo(BigFraction.ONE);
        assertThat(blend.bounds()).isEqualTo(blend.result().bounds().get());
    }

    @Test
    void the_cost_of_a_kilogram_does_not_depend_on_the_batch_and_what_is_out_stays_out() {
        var crumble = Panade.open(CRUMBLE).orElseThrow();
        assertThat(cost(crumble.withBatch("40 lb"))).isEqualTo(cost(new Opened.Sound(crumble)));
        var without = crumble.without("pea-fibre")
                .orElseThrow()
                .without("citrus-fibre")
                .orElseThrow();
        assertThat(((Answer.Blend) without.withBatch("1 kg").orElseThrow().solve()).shares())
                .doesNotContainKeys("pea-fibre", "citrus-fibre");
    }

    @Test
    void that_there_is_no_blend_is_an_answer() {
        var none = Panade.open(Path.of("constraints/taco-wish-list.json"))
                .orElseThrow()
                .solve();
        assertThat(none.<Integer>fold(
                        blend -> 0, proof -> proof.result().conflicts().size(), open -> 0))
                .isPositive();
        assertThat(((Answer.NoBlend) none).result()).isInstanceOf(NoBlendResult.class);
    }

    @Test
    void what_is_wrong_with_documents_is_told_with_its_place_and_nothing_is_thrown() throws IOException {
        var brief = Files.writeString(folder.resolve("brief.json"), "{\"batch\": \"10 miles\", \"bonds\": []}");
        var opened = Panade.open(brief);
        assertThat(opened.<List<String>>fold(product -> List.of(), faults -> faults))
                .anyMatch(fault -> fault.startsWith(brief + ":1:") && fault.contains("miles"))
                .anyMatch(fault -> fault.contains("bonds") && fault.contains("bounds"));
        assertThatThrownBy(opened::orElseThrow)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("miles");
        assertThat(Panade.open(CRUMBLE).orElseThrow().withBatch("ten").<Boolean>fold(product -> true, faults -> false))
                .isFalse();
    }

    private static BigFraction cost(Opened opened) {
        return ((Answer.Blend) opened.orElseThrow().solve()).costPerKg();
    }
}
