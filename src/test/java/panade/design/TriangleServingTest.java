package panade.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import panade.design.TriangleServing.Sample;

class TriangleServingTest {
    @Test
    void orders_are_even_and_codes_are_never_met_twice() {
        var servings = TriangleServing.serve(27, 5);
        var counts = servings.stream().collect(Collectors.groupingBy(TriangleServing::cups, Collectors.counting()));
        assertThat(counts).hasSize(6);
        assertThat(counts.values()).allMatch(count -> count == 4 || count == 5);
        assertThat(servings.stream().flatMap(serving -> serving.codes().stream()))
                .hasSize(81)
                .doesNotHaveDuplicates()
                .allMatch(code -> code >= 100 && code <= 999);
    }

    @Test
    void the_odd_cup_is_the_one_whose_sample_is_there_once() {
        for (var serving : TriangleServing.serve(12, 1)) {
            var odd = serving.cups().get(serving.odd());
            assertThat(Collections.frequency(serving.cups(), odd)).isEqualTo(1);
            assertThat(serving.cups()).hasSize(3).contains(Sample.A, Sample.B);
        }
    }

    @Test
    void a_seed_gives_the_same_sheet_again_and_another_one_another() {
        assertThat(TriangleServing.serve(12, 1)).isEqualTo(TriangleServing.serve(12, 1));
        assertThat(TriangleServing.serve(12, 1)).isNotEqualTo(TriangleServing.serve(12, 2));
        assertThat(BlindCodes.draw(900, 3)).doesNotHaveDuplicates().hasSize(900);
        assertThat(BlindCodes.draw(0, 3)).isEqualTo(List.of());
    }

    @Test
    void more_than_there_are_codes_for_is_refused() {
        assertThat(TriangleServing.serve(300, 1)).hasSize(300);
        assertThatThrownBy(() -> TriangleServing.serve(301, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BlindCodes.draw(901, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
