package panade.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import panade.document.Documents;
import panade.document.KitchenWorkbooks;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.domain.origin.Origin;
import panade.domain.purchase.OfferId;
import panade.sheet.poi.PoiSpreadsheets;

/** Random kitchens, written as a workbook and read again. */
class KitchenSheetsTest {
    @Provide
    Arbitrary<RawProblem> problems() {
        return RandomKitchen.problems();
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void a_kitchen_comes_back_from_its_workbook(@ForAll("problems") RawProblem problem) throws IOException {
        var folder = Files.createTempDirectory("panade-sheets");
        try {
            var file = RawDocuments.of(problem).writeInto(folder);
            var written = ((Reading.Accepted<KitchenWorkbooks.Written>) KitchenWorkbooks.of(file)).value();
            var workbook = folder.resolve("back.xlsx");
            Files.write(workbook, new PoiSpreadsheets().write(written.book()));
            assertThat(brief(workbook))
                    .usingRecursiveComparison()
                    .ignoringFieldsOfTypes(Origin.class, OfferId.class)
                    .ignoringFieldsMatchingRegexes(".*\\bfile", ".*\\btitle", ".*\\bremarks", ".*\\bpath", ".*\\bkey")
                    .isEqualTo(brief(file));
        } finally {
            clear(folder);
        }
    }

    private static Brief brief(Path file) {
        return ((Reading.Accepted<Brief>) Documents.readBrief(file, Overrides.NONE)).value();
    }

    private static void clear(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            for (var file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }
}
