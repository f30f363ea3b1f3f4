package panade.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import panade.report.Block;
import panade.report.ReportDocument;

/** Reports of hostile names and wide tables as text for a terminal. */
class TextRendererTest {
    @Property(tries = 300)
    void noTextCommandsATerminalOrLeavesItsLines(@ForAll @Size(value = 6) List<String> words) {
        var report = new ReportDocument(
                words.get(0),
                List.of(
                        new Block.Heading(words.get(1)),
                        new Block.Paragraph(words.get(2)),
                        new Block.Points(List.of(words.get(3))),
                        new Block.Table(
                                List.of(new Block.Column(words.get(4), false)), List.of(List.of(words.get(5))))));
        var text = TextRenderer.render(report);
        assertThat(text.codePoints().filter(each -> each != '\n'))
                .noneMatch(Character::isISOControl)
                .noneMatch(TextRendererTest::turnsDirection);
        assertThat(text.lines()).allMatch(line -> line.length() <= 100);
    }

    /** Unicode's Bidi_Control, by Java's own tables of direction for all but the three marks. */
    private static boolean turnsDirection(int character) {
        return switch (Character.getDirectionality(character)) {
            case Character.DIRECTIONALITY_LEFT_TO_RIGHT_EMBEDDING,
                    Character.DIRECTIONALITY_LEFT_TO_RIGHT_OVERRIDE,
                    Character.DIRECTIONALITY_RIGHT_TO_LEFT_EMBEDDING,
                    Character.DIRECTIONALITY_RIGHT_TO_LEFT_OVERRIDE,
                    Character.DIRECTIONALITY_POP_DIRECTIONAL_FORMAT,
                    Character.DIRECTIONALITY_LEFT_TO_RIGHT_ISOLATE,
                    Character.DIRECTIONALITY_RIGHT_TO_LEFT_ISOLATE,
                    Character.DIRECTIONALITY_FIRST_STRONG_ISOLATE,
                    Character.DIRECTIONALITY_POP_DIRECTIONAL_ISOLATE -> true;
            default -> character == 0x200E || character == 0x200F || character == 0x061C;
        };
    }

    @Test
    void aTitleCannotFakeLines() {
        var title = "Filling\nEvery bound is met.\r\n\u001B]8;;http://x\u0007y\u009B2J\u202Ez";
        assertThat(TextRenderer.render(new ReportDocument(title, List.of())))
                .isEqualTo("Filling\\nEvery bound is met.\\r\\n\\u001b]8;;http://x\\u0007y\\u009b2J\\u202ez\n");
    }

    @Property(tries = 100)
    void aTableFitsWhateverItsNamesAndKeepsEveryNumber(
            @ForAll @IntRange(min = 1, max = 20) int columns,
            @ForAll @StringLength(min = 1, max = 120) String heading,
            @ForAll @StringLength(max = 120) String name) {
        var row = IntStream.range(0, columns)
                .mapToObj(i -> i % 3 == 0 ? name : "1234.5678" + i)
                .toList();
        var heads = IntStream.range(0, columns)
                .mapToObj(i -> new Block.Column(heading, i % 3 != 0))
                .toList();
        var text = TextRenderer.render(new ReportDocument("t", List.of(new Block.Table(heads, List.of(row)))));
        assertThat(text.lines()).allMatch(line -> line.length() <= 100);
        for (int i = 0; i < columns; i++) {
            if (i % 3 != 0) {
                assertThat(text).contains("1234.5678" + i);
            }
        }
    }

    @Test
    void aLongNameGoesOnInTheNextLineAndLosesNothing() {
        var name = "textured protein of yellow peas, coarse, washed, from the mill at the north end of the harbour";
        var table = new Block.Table(
                List.of(new Block.Column("Ingredient", false), new Block.Column("Share", true)),
                List.of(List.of(name, "12.5 %"), List.of("water", "87.5 %")));
        var words = new TextTable(table, 60).lines();
        assertThat(words).allMatch(line -> line.length() <= 60).hasSize(4);
        assertThat(words.get(1)).startsWith("textured protein").endsWith("12.5 %");
        assertThat((words.get(1).replace("12.5 %", "").strip() + " "
                        + words.get(2).strip()))
                .isEqualTo(name);
    }

    @Test
    void aMessageQuotesNoMoreThanAReaderTakesIn() {
        var value = "x".repeat(100_000);
        assertThat(PlainText.message("\"" + value + "\" is not a number.").length())
                .isLessThan(200);
        assertThat(PlainText.message("\"" + value + "\" is not a number."))
                .startsWith("\"xxx")
                .endsWith("\u2026" + "x".repeat(20) + "\" (100000 characters) is not a number.");
        assertThat(PlainText.message(value).length()).isLessThanOrEqualTo(4_000);
    }
}
