package panade.sheet.poi;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import panade.sheet.Cell.Form;
import panade.sheet.Cell.Look;

/** A workbook's styles, each made once. */
final class Looks {
    private static final byte[] SHADE = {(byte) 0xFF, (byte) 0xF4, (byte) 0xD6};

    /** @param quoted whether the cell is marked as text whatever it begins with (ECMA-376, part 1, 18.8.45) */
    private record Key(Look look, Form form, boolean quoted) {}

    private final XSSFWorkbook workbook;
    private final Map<Key, XSSFCellStyle> styles = new HashMap<>();

    Looks(XSSFWorkbook workbook) {
        this.workbook = workbook;
    }

    XSSFCellStyle style(Look look, Form form, boolean quoted) {
        return styles.computeIfAbsent(new Key(look, form, quoted), this::make);
    }

    private XSSFCellStyle make(Key key) {
        var style = workbook.createCellStyle();
        style.setDataFormat(workbook.createDataFormat().getFormat(key.form().code()));
        style.setQuotePrefixed(key.quoted());
        switch (key.look()) {
            case PLAIN -> {}
            case TITLE -> embolden(style, (short) 14);
            case HEADING -> {
                embolden(style, (short) 11);
                style.setBorderBottom(BorderStyle.THIN);
                style.setWrapText(true);
            }
            case INPUT -> {
                style.setFillForegroundColor(new XSSFColor(SHADE, null));
                style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
            }
            case TYPED -> {
                style.setFillForegroundColor(new XSSFColor(SHADE, null));
                style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
                style.setDataFormat(workbook.createDataFormat().getFormat("@"));
            }
            case PROSE -> {
                style.setWrapText(true);
                style.setVerticalAlignment(VerticalAlignment.TOP);
            }
            case TOTAL -> {
                embolden(style, (short) 11);
                style.setBorderTop(BorderStyle.THIN);
            }
        }
        return style;
    }

    private void embolden(XSSFCellStyle style, short points) {
        var font = workbook.createFont();
        font.setBold(true);
        font.setFontHeightInPoints(points);
        style.setFont(font);
    }
}
