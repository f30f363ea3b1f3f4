package panade.sheet.poi;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import panade.sheet.Book;
import panade.sheet.Cell;
import panade.sheet.SheetDraft;

/** Words that begin like a formula (OWASP, CSV Injection, lists the signs). */
class HarmlessTextTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=HYPERLINK(\"http://x\",\"y\")",
                "+1+1",
                "-1-1",
                "@SUM(A1)",
                "\tindented",
                "\rreturned",
                "= = =",
                "'quoted",
                "plain"
            })
    void words_stay_words_and_come_back_as_they_were(String words, @TempDir Path folder) throws IOException {
        var draft = new SheetDraft("Words");
        draft.add(Cell.text(words));
        var bytes = new PoiSpreadsheets().write(new Book(List.of(draft.finish())));
        try (var workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
            var cell = workbook.getSheetAt(0).getRow(0).getCell(0);
            assertThat(cell.getCellType()).isEqualTo(CellType.STRING);
            boolean begins = "=+-@\t\r".indexOf(words.charAt(0)) >= 0;
            assertThat(cell.getCellStyle().getQuotePrefixed()).isEqualTo(begins);
        }
        var file = Files.write(folder.resolve("words.xlsx"), bytes);
        var read = new PoiSpreadsheets().read(file).get(0).rows().get(0).get(0);
        assertThat(read.text()).isEqualTo(words);
    }
}
