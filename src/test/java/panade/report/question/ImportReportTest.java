package panade.report.question;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import panade.render.TextRenderer;
import panade.result.ImportResult;
import panade.result.ImportResult.Change;
import panade.result.ImportResult.Document;
import panade.result.ImportResult.Kind;

/** What is told of a file that was taken in. Invented. */
class ImportReportTest {
    private static final List<Document> FILES = List.of(new Document(
            "prices.csv",
            false,
            List.of(
                    new Change(Kind.CHANGED, "Mill bran", "price", "1.00", "1.20"),
                    new Change(Kind.GONE, "Mill oats", "", "2.00", ""))));

    @Test
    void whatDiffersIsToldAsWhatBecomesOfIt() {
        assertThat(said(true, false, false)).contains("Taken in but for 1 row.", "changed Mill bran price 1.00 1.20");
        assertThat(said(false, true, false)).contains("Nothing was written.", "differs Mill bran price 1.00 1.20");
        assertThat(said(false, false, true)).contains("nothing was written.", "kept Mill oats 2.00");
    }

    @Test
    void changesAreCountedByTheirKind() {
        assertThat(said(true, false, false)).contains("prices.csv: 0 added, 1 different, 1 gone");
    }

    @Test
    void allergensThatNobodyStatesAreNamed() {
        assertThat(said(true, false, false)).contains("which is not the same as none, of: bran.");
    }

    private static String said(boolean written, boolean refused, boolean keepsOld) {
        var result = new ImportResult(
                written,
                refused,
                FILES,
                List.of(),
                List.of(),
                List.of("row 3: no price"),
                List.of(),
                List.of("bran"),
                keepsOld,
                false);
        return TextRenderer.render(ImportReport.of(result)).replaceAll("\\s+", " ");
    }
}
