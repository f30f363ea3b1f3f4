package panade.sheet.poi;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.UnsupportedFileFormatException;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;
import panade.sheet.Grid;
import panade.sheet.Grid.Entry;
import panade.sheet.Grid.Sort;

/** Reads workbooks; formulas as they were last calculated. */
final class GridReader {
    private GridReader() {}

    static List<Grid> read(Path file) throws IOException {
        try (var opened = OPCPackage.open(file.toFile(), PackageAccess.READ);
                var workbook = new XSSFWorkbook(opened)) {
            return IntStream.range(0, workbook.getNumberOfSheets())
                    .mapToObj(i -> grid(workbook.getSheetAt(i)))
                    .toList();
        } catch (InvalidFormatException
                | POIXMLException
                | OpenXML4JRuntimeException
                | UnsupportedFileFormatException e) {
            throw new IOException(e);
        }
    }

    private static Grid grid(XSSFSheet sheet) {
        var rows = new ArrayList<List<Entry>>();
        for (int i = 0; i <= sheet.getLastRowNum(); i++) {
            rows.add(entries(sheet.getRow(i)));
        }
        return new Grid(sheet.getSheetName(), rows);
    }

    private static List<Entry> entries(@Nullable XSSFRow row) {
        var entries = new ArrayList<Entry>();
        int end = row == null ? 0 : Math.max(0, row.getLastCellNum());
        for (int i = 0; row != null && i < end; i++) {
            entries.add(entry(row.getCell(i)));
        }
        return entries;
    }

    private static Entry entry(@Nullable XSSFCell cell) {
        if (cell == null) {
            return Entry.BLANK;
        }
        boolean computed = cell.getCellType() == CellType.FORMULA;
        var type = computed ? cell.getCachedFormulaResultType() : cell.getCellType();
        return switch (type) {
            case NUMERIC -> number(cell, computed);
            case ERROR -> new Entry(cell.getErrorCellString(), Sort.ERROR);
            case BOOLEAN -> new Entry(cell.getBooleanCellValue() ? "TRUE" : "FALSE", Sort.TEXT);
            default -> new Entry(cell.getStringCellValue(), Sort.TEXT);
        };
    }

    private static Entry number(XSSFCell cell, boolean computed) {
        var raw = cell.getRawValue();
        if (raw == null || raw.isBlank()) {
            return Entry.BLANK;
        }
        boolean date = DateUtil.isCellDateFormatted(cell);
        return new Entry(computed ? Typed.computed(raw) : Typed.number(raw), date ? Sort.DATE : Sort.NUMBER);
    }
}
