package panade.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whoever follows the first page, from an empty folder and with nothing but what it shows, has a sheet to weigh by. */
class FirstMinceTest {
    private static final Path PAGE = Pages.MANUAL.resolve("first-mince.md");

    @Test
    void its_files_and_commands_end_with_a_printed_sheet() throws IOException {
        var desk = Desk.of(PAGE);
        for (var block : Pages.blocks(PAGE)) {
            if (Pages.isFile(block)) {
                desk.write(block.group(3), Pages.text(block));
            } else {
                desk.printed(Pages.command(block));
            }
        }
        assertThat(Files.readString(desk.file("sheet.txt")))
                .contains("2 lb to weigh", "Weighed like this, every bound is met", "[ ]")
                .isEqualTo(desk.printed("batch mince.json"));
        assertThat(Files.readString(desk.file("mince.html"))).startsWith("<!DOCTYPE html>");
    }

    @Test
    void each_file_is_named_where_it_is_shown() throws IOException {
        var text = Files.readString(PAGE);
        var files = Pages.blocks(PAGE).stream().filter(Pages::isFile).toList();
        assertThat(files)
                .extracting(block -> block.group(3))
                .containsSequence(List.of("pantry.json", "prices.csv", "mince.json"));
        for (var file : files) {
            assertThat(text).contains("`" + file.group(3) + "`");
        }
    }
}
