package panade.buy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;

/** Three weeks of 3 kg of scallions from 10-kg crates; worked out by hand, all data invented. */
class StorageTest {
    private CommandRun run = CommandRun.NONE;

    @BeforeEach
    void writeDocuments(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"title": "shed", "source": "invented", "ingredients": [{"id": "scallion", "values": {}, "allergens": []}]}
                """);
        Files.writeString(folder.resolve("prices.csv"), """
                ingredient,supplier,price,per,pack
                scallion,market,20,10 kg,10 kg
                """);
        Files.writeString(folder.resolve("brief.json"), """
                {"title": "scallions", "ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD", "batch": "3 kg"}
                """);
        this.folder = folder;
    }

    private Path folder = Path.of("");

    @Test
    void what_keeps_for_ever_is_bought_once() throws IOException {
        assertThat(buy("{}")).isZero();
        assertThat(run.output()).contains("\"cash\" : 20,").contains("\"wasted\" : 0");
    }

    @Test
    void what_keeps_a_week_is_bought_again_in_the_third() throws IOException {
        assertThat(buy("{\"keeps\": {\"scallion\": 1}}")).isZero();
        // a crate for the first two weeks, of which 4 kg are thrown away, and one for the third
        assertThat(run.output()).contains("\"cash\" : 40,").contains("\"wasted\" : 4");
    }

    @Test
    void storage_is_paid_for_what_is_left_each_week() throws IOException {
        assertThat(buy("{\"cost\": \"0.50/kg\"}")).isZero();
        // 20 and half a dollar on 7, 4 and 1 kg
        assertThat(run.output()).contains("\"cash\" : 26,");
    }

    @Test
    void a_slip_in_the_periods_is_told_with_its_place() throws IOException {
        assertThat(buy("{\"keeps\": {\"scalion\": 1}}")).isEqualTo(3);
        assertThat(run.messages())
                .contains("periods.json:1:")
                .contains("/storage/keeps/scalion")
                .contains("scallion");
    }

    private int buy(String storage) throws IOException {
        var periods = Files.writeString(
                folder.resolve("periods.json"),
                "{\"storage\": " + storage
                        + ", \"periods\": [{\"name\": \"1\"}, {\"name\": \"2\"}, {\"name\": \"3\"}]}");
        run = CommandRun.of(
                "buy",
                folder.resolve("brief.json") + "=3kg",
                "--periods",
                periods.toString(),
                "--leftover-worth",
                "0%",
                "--json");
        return run.status();
    }
}
