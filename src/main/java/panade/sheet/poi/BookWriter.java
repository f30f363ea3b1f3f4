package panade.sheet.poi;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Date;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType;
import panade.quantity.Decimal;
import panade.sheet.Book;
import panade.sheet.Cell;
import panade.sheet.Cell.Figure;
import panade.sheet.Cell.Form;
import panade.sheet.Cell.Formula;
import panade.sheet.Cell.Remark;
import panade.sheet.Cell.Text;
import panade.sheet.Sheet;

/** Writes books; numbers and what formulas come to are written as decimals, not by way of binary floating point. */
final class BookWriter {
    /** A spreadsheet computes with so many significant digits. */
    static final int DIGITS = 15;

    // Not the first day that an archive can hold: that is written as an instant, and so with the time zone in it.
    private static final LocalDateTime SOME_DAY = LocalDateTime.of(1980, 1, 2, 0, 0);
    private static final int CHARACTER = 256;
    private static final Set<Character> FORMULA_STARTS = Set.of('=', '+', '-', '@', '\t', '\r');

    private final XSSFWorkbook workbook;
    private final Looks looks;

    private BookWriter(XSSFWorkbook workbook) {
        this.workbook = workbook;
        this.looks = new Looks(workbook);
    }

    static byte[] write(Book book) {
        var bytes = new ByteArrayOutputStream();
        try (var workbook = new XSSFWorkbook()) {
            // No clock: the same answer is the same file.
            workbook.getProperties().getCoreProperties().setCreated(Optional.of(Date.from(Instant.EPOCH)));
            new BookWriter(workbook).add(book);
            workbook.write(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return timeless(bytes.toByteArray());
    }

    /** The same archive with one date on all its parts. */
    private static byte[] timeless(byte[] archive) {
        var bytes = new ByteArrayOutputStream();
        try (var from = new ZipInputStream(new ByteArrayInputStream(archive));
                var to = new ZipOutputStream(bytes)) {
            for (var entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
                var fresh = new ZipEntry(entry.getName());
                fresh.setTimeLocal(SOME_DAY);
                to.putNextEntry(fresh);
                from.transferTo(to);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private void add(Book book) {
        // All sheets first, because formulas may name any of them.
        var sheets = book.sheets().stream()
                .map(sheet -> workbook.createSheet(sheet.name()))
                .toList();
        for (int i = 0; i < sheets.size(); i++) {
            fill(sheets.get(i), book.sheets().get(i));
        }
    }

    private void fill(XSSFSheet sheet, Sheet content) {
        for (int i = 0; i < content.widths().size(); i++) {
            sheet.setColumnWidth(i, content.widths().get(i) * CHARACTER);
        }
        if (content.frozen() > 0) {
            sheet.createFreezePane(0, content.frozen());
        }
        sheet.getPrintSetup().setLandscape(true);
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setFitHeight((short) 0);
        for (int i = 0; i < content.rows().size(); i++) {
            var row = sheet.createRow(i);
            var cells = content.rows().get(i);
            for (int j = 0; j < cells.size(); j++) {
                if (!cells.get(j).equals(Cell.BLANK)) {
                    put(cells.get(j), row.createCell(j));
                }
            }
            int lines = Wrapping.lines(cells, content.widths());
            if (lines > 1) {
                row.setHeightInPoints(lines * sheet.getDefaultRowHeightInPoints());
            }
        }
        content.help().forEach(help -> HelpWriter.write(help, sheet));
    }

    private void put(Cell content, XSSFCell cell) {
        if (content instanceof Text text) {
            cell.setCellValue(text.text());
            cell.setCellStyle(looks.style(text.look(), Form.PLAIN, couldBeFormula(text.text())));
        } else if (content instanceof Figure figure) {
            cell.setCellStyle(looks.style(figure.look(), figure.form(), false));
            putNumber(figure.value(), cell);
        } else if (content instanceof Formula formula) {
            cell.setCellFormula(formula.expression());
            cell.setCellStyle(looks.style(formula.look(), formula.form(), false));
            cell.getCTCell().setV(digits(formula.value()));
        } else if (content instanceof Remark remark) {
            cell.setCellFormula(remark.expression());
            cell.setCellStyle(looks.style(remark.look(), Form.PLAIN, false));
            cell.setCellValue(remark.value());
        }
    }

    private static void putNumber(BigFraction value, XSSFCell cell) {
        cell.getCTCell().setT(STCellType.N);
        cell.getCTCell().setV(digits(value));
    }

    private static String digits(BigFraction value) {
        return Decimal.significant(value, DIGITS).toPlainString();
    }

    /** Whether somebody who edits the cell, or saves it as CSV, could make a formula of it. */
    private static boolean couldBeFormula(String text) {
        return !text.isEmpty() && FORMULA_STARTS.contains(text.charAt(0));
    }
}
