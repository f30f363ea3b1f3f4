package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;

/** Scales on which a batch does not show. */
class BatchCommandTest {
    private static final String FILLING = "constraints/dumpling-filling.json";

    private CommandRun run = CommandRun.NONE;

    @Test
    void aScaleWithStepsAboveTheBatchIsRefused() {
        assertThat(run("batch", FILLING, "--batch", "5lb", "--weighing", "25lb"))
                .isEqualTo(2);
        assertThat(run.messages()).contains("a batch of 5lb is less than one of them");
        assertThat(run("batch", FILLING, "--batch", "5lb", "--fine", "25lb")).isEqualTo(2);
    }

    @Test
    void aPageOfSuchAScaleIsStillWritten(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"title": "t", "source": "invented", "ingredients": [
                 {"id": "a", "values": {"FAT": 100}}, {"id": "b", "values": {"FAT": 0}}]}
                """);
        Files.writeString(folder.resolve("prices.csv"), "ingredient,supplier,price,per\na,mill,2,kg\nb,mill,1,kg\n");
        var brief = Files.writeString(folder.resolve("brief.json"), """
                {"title": "t", "ingredients": "set.json", "prices": ["prices.csv"], "batch": "1 kg", "weighing": "9 kg",
                 "bounds": [{"property": "FAT", "min": "20 %"}]}
                """);
        var page = folder.resolve("page.html");
        assertThat(run("report", brief.toString(), "-o", page.toString())).isZero();
        assertThat(Files.readString(page).contains("no weights were found that meet every bound"))
                .isTrue();
    }

    private int run(String... arguments) {
        run = CommandRun.of(arguments);
        return run.status();
    }
}
