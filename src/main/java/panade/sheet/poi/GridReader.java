package panade.sheet.poi;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import panade.sheet.Grid;
import panade.sheet.Grid.Entry;
import panade.sheet.Grid.Sort;
import panade.sheet.Place;
import panade.sheet.WorkbookTooLarge;

/** Reads workbooks; formulas as they were last calculated. */
final class GridReader {
    private static final int MOST_COLUMNS = 1_000;
    private static final int MOST_ROWS = 100_000;
    private static final long MOST_BYTES = 64L << 20;

    private GridReader() {}

    static List<Grid> read(Path file) throws IOException {
        try (var opened = OPCPackage.open(file.toFile(), PackageAccess.READ)) {
            checkSize(opened);
            try (var workbook = new XSSFWorkbook(opened)) {
                var grids = new ArrayList<Grid>();
                for (var sheet : workbook) {
                    grids.add(grid((XSSFSheet) sheet));
                }
                return grids;
            }
        } catch (OpenXML4JException | RuntimeException e) {
            // On a damaged file the library throws whatever its parsers run into, not only what it documents.
            throw new IOException(e);
        }
    }

    /** The library holds a workbook in memory, at several times the size that it has unpacked. */
    private static void checkSize(OPCPackage opened) throws IOException, OpenXML4JException {
        long size = 0;
        for (var part : opened.getParts()) {
            size += Math.max(0, part.getSize());
        }
        if (size > MOST_BYTES) {
            throw new WorkbookTooLarge(
                    "It is " + (size >> 20) + " MB when unpacked, and " + (MOST_BYTES >> 20) + " MB at most are read");
        }
    }

    private static Grid grid(XSSFSheet sheet) throws IOException {
        var rows = new ArrayList<List<Entry>>();
        for (var row : sheet) {
            var entries = entries((XSSFRow) row);
            if (!entries.isEmpty()) {
                if (row.getRowNum() >= MOST_ROWS) {
                    throw tooFar(sheet, 0, row.getRowNum(), MOST_ROWS + " rows");
                }
                while (rows.size() < row.getRowNum()) {
                    rows.add(List.of());
                }
                rows.add(entries);
            }
        }
        return new Grid(sheet.getSheetName(), rows);
    }

    private static IOException tooFar(XSSFSheet sheet, int column, int row, String most) {
        return new WorkbookTooLarge("Something stands in the cell " + sheet.getSheetName() + "!"
                + Place.of(column, row + 1) + ", and " + most + " at most are read");
    }

    /** Cells up to the last that has something in it: spreadsheet programs keep blank ones for their looks. */
    private static List<Entry> entries(XSSFRow row) throws IOException {
        var entries = new ArrayList<Entry>();
        for (var cell : row) {
            var entry = entry((XSSFCell) cell);
            if (!entry.isBlank()) {
                if (cell.getColumnIndex() >= MOST_COLUMNS) {
                    throw tooFar(row.getSheet(), cell.getColumnIndex(), row.getRowNum(), MOST_COLUMNS + " columns");
                }
                while (entries.size() < cell.getColumnIndex()) {
                    entries.add(Entry.BLANK);
                }
                entries.add(entry);
            }
        }
        return entries;
    }

    private static Entry entry(XSSFCell cell) {
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
