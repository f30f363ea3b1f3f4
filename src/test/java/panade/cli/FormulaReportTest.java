package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page of what is made: 5, 2 and 3 of oats, soybeans and beans cost 2.4 a kilogram and hold 17 % of protein. */
class FormulaReportTest {
    @TempDir
    private Path folder;

    private Grains grains;
    private Path page;

    @BeforeEach
    void write() throws IOException {
        grains = new Grains(folder);
        grains.made("5000", "2000", "3000");
        page = folder.resolve("page.html");
    }

    @Test
    void thePageSpeaksOfWhatIsMade() throws IOException {
        var run = grains.run("report", "made.json", "-o", page.toString());
        assertThat(run.status()).as(run.messages()).isZero();
        assertThat(Files.readString(page))
                .contains("1.0886 USD/lb as made", "As made, 10000 g cost 24.00 USD")
                .contains("protein: 17, at least 20 % is asked: 3 too little.")
                .contains("What the label would say", "Contains: soy.")
                .contains("id=\"sheet\"", "The formula itself breaks, on any scale:");
        var json = Grains.json(grains.run("report", "made.json", "-o", page.toString(), "--json"));
        assertThat(json.get("cost").get("perKg").asDouble()).isCloseTo(2.4, within(1e-12));
    }

    @Test
    void whatADocumentCallsAFormulaIsShownAsItIsWritten() throws IOException {
        var text = Files.readString(folder.resolve("made.json"));
        grains.write("made.json", text.replace("as made", "<script>alert(1)</script>"));
        grains.run("report", "made.json", "-o", page.toString());
        var html = Files.readString(page);
        assertThat(html.contains("&lt;script")).isTrue();
        assertThat(html.contains("<script>alert(1)")).isFalse();
    }

    @Test
    void whatIsMadeHasNoCurve() {
        var run = grains.run("report", "made.json", "-o", page.toString(), "--price", "oats");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.messages()).contains("what is made has no curve");
        assertThat(page).doesNotExist();
    }
}
