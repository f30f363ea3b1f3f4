package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;

/** 10 kg of oil at 2 and bean at 1 a kilogram; 20 % of that batch are 2 kg. Data invented. */
class FixedBoundTest {
    @TempDir
    private Path folder;

    @Test
    void a_weight_and_a_share_that_are_one_amount_move_together() throws IOException {
        // .2 x 2 + .8 x 1 = 1.2; each per cent more of oil costs .01
        var told = run("trace", "\"min\": \"2 kg\", \"max\": \"20 %\"");
        assertThat(told).contains("\"costPerKg\"").doesNotContain("--side");
        assertThat(run("blend", "\"min\": \"2 kg\", \"max\": \"20 %\"")).contains("\"fixed\"");
    }

    @Test
    void a_weight_and_a_share_that_only_look_alike_do_not() throws IOException {
        // .2 kg are 2 % of the batch
        assertThat(run("trace", "\"min\": \"0.2 kg\", \"max\": \"20 %\"")).contains("say --side min or --side max");
        assertThat(run("blend", "\"min\": \"0.2 kg\", \"max\": \"20 %\"")).contains("\"binding\" : \"min\"");
    }

    private String run(String command, String limits) throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"title": "two", "source": "invented", "ingredients": [
                  {"id": "oil", "values": {"FAT": 100}, "others": 0, "allergens": []},
                  {"id": "bean", "values": {"FAT": 0}, "others": 0, "allergens": []}]}
                """);
        Files.writeString(folder.resolve("prices.csv"), "ingredient,supplier,price,per\noil,a,2,kg\nbean,a,1,kg\n");
        var brief = Files.writeString(folder.resolve("brief.json"), """
                {"title": "two", "ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD",
                 "batch": "10 kg", "bounds": [{"name": "oil", "ingredient": "oil", %s}]}
                """.formatted(limits));
        var arguments = command.equals("trace")
                ? new String[] {"trace", brief.toString(), "--bound", "oil", "--json"}
                : new String[] {command, brief.toString(), "--json"};
        var run = CommandRun.of(arguments);
        return run.output() + run.messages();
    }
}
