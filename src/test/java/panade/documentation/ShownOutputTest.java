package panade.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ShownOutputTest {
    private static final String SHOWN = """
            Filling

            Cheapest blend: 1.22 USD/lb.
            ...
            Bound   Value
            fat        18  binds
            salt      1.1
            ...
            - Allergens: soy.
            ...
            """;

    @Test
    void figuresAreReplacedAndElisionsKept() {
        var printed = List.of(
                "Filling",
                "",
                "Cheapest blend: 1.30 USD/lb.",
                "",
                "Proved.",
                "",
                "Bound   Value",
                "fat        19",
                "sugar       2  binds",
                "salt      1.2",
                "water      59",
                "",
                "- Allergens: soy.",
                "- Keep cold.");

        assertThat(ShownOutput.of(SHOWN).of(printed)).contains("""
                Filling

                Cheapest blend: 1.30 USD/lb.
                ...
                Bound   Value
                fat        19
                sugar       2  binds
                salt      1.2
                ...
                - Allergens: soy.
                ...
                """);
    }

    @Test
    void aRunWhoseLastLineIsGoneKeepsItsLength() {
        var printed = List.of(
                "Filling",
                "",
                "Cheapest blend: 1.30 USD/lb.",
                "Bound   Value",
                "fat        19",
                "sugar       2",
                "water      59",
                "- Allergens: soy, wheat.",
                "- Keep cold.");

        assertThat(ShownOutput.of(SHOWN).of(printed).orElseThrow())
                .contains("Bound   Value\nfat        19\nsugar       2\n...\n- Allergens: soy, wheat.\n...\n");
    }

    @Test
    void anOutputWithoutTheRunIsNotGuessed() {
        assertThat(ShownOutput.of(SHOWN).of(List.of("Filling", "", "No blend can meet every bound.")))
                .isEmpty();
    }

    @Test
    void anOutputShownWholeIsShownWhole() {
        assertThat(ShownOutput.of("Two lines\nof 1.\n").of(List.of("Three lines", "of 2", "now")))
                .contains("Three lines\nof 2\nnow\n");
    }
}
