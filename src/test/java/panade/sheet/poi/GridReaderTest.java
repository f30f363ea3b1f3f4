package panade.sheet.poi;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.function.BiConsumer;
import org.apache.poi.xssf.streaming.SXSSFRow;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import panade.sheet.Grid.Entry;

/** Workbooks that are empty, damaged or far too wide. */
class GridReaderTest {
    private static final int LAST_COLUMN = 16_383; // XFD, the last that ECMA-376 has

    @TempDir
    Path folder;

    @Test
    void anEmptyFileIsNoWorkbook() throws IOException {
        var file = Files.createFile(folder.resolve("empty.xlsx"));
        assertThatThrownBy(() -> new PoiSpreadsheets().read(file)).isInstanceOf(IOException.class);
    }

    @Test
    void aDamagedWorkbookIsReadOrRefusedWithoutAWordFromTheLibrary() throws Exception {
        var whole = workbook(5, (i, row) -> {
            row.createCell(0).setCellValue("soy" + i);
            row.createCell(1).setCellValue(i + 0.5);
        });
        var errors = folder.resolve("errors");
        var process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        DamagedWorkbooks.class.getName(),
                        whole.toString(),
                        folder.resolve("damaged.xlsx").toString(),
                        "300")
                .redirectError(errors.toFile())
                .start();
        var printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(Files.readString(errors)).isZero();
        assertThat(printed).endsWith(" readable\n").isNotEqualTo("300 readable\n");
        assertThat(errors).hasContent("");
    }

    @Test
    @Timeout(value = 60, unit = TimeUnit.SECONDS)
    void aCellInTheLastColumnOfEveryRowIsRefusedWithItsPlace() throws IOException {
        var file = workbook(20_000, (i, row) -> row.createCell(LAST_COLUMN).setCellValue(1));
        assertThatThrownBy(() -> new PoiSpreadsheets().read(file))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("XFD1")
                .hasMessageContaining("1000 columns");
    }

    @Test
    void blankCellsFarToTheRightAreNothing() throws IOException {
        var file = workbook(3, (i, row) -> {
            row.createCell(1).setCellValue("soy" + i);
            row.createCell(LAST_COLUMN).setBlank();
        });
        assertThat(new PoiSpreadsheets().read(file).get(0).rows())
                .hasSize(3)
                .allMatch(row -> row.size() == 2 && row.get(0).isBlank());
        assertThat(new PoiSpreadsheets().read(file).get(0).rows().get(2).get(1))
                .extracting(Entry::text)
                .isEqualTo("soy2");
    }

    @Test
    void aRowFarBelowTheOthersIsRefusedWithItsPlace() throws IOException {
        var file = folder.resolve("deep.xlsx");
        try (var workbook = new SXSSFWorkbook();
                var to = Files.newOutputStream(file)) {
            var sheet = workbook.createSheet("Mine");
            sheet.createRow(0).createCell(0).setCellValue("id");
            sheet.createRow(1_048_575).createCell(0).setCellValue("soy");
            workbook.write(to);
        }
        assertThatThrownBy(() -> new PoiSpreadsheets().read(file))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("A1048576")
                .hasMessageContaining("100000 rows");
    }

    private Path workbook(int rows, BiConsumer<Integer, SXSSFRow> fill) throws IOException {
        var file = folder.resolve("book.xlsx");
        try (var workbook = new SXSSFWorkbook();
                var to = Files.newOutputStream(file)) {
            var sheet = workbook.createSheet("Mine");
            for (int i = 0; i < rows; i++) {
                fill.accept(i, sheet.createRow(i));
            }
            workbook.write(to);
        }
        return file;
    }
}
