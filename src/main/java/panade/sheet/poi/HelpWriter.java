package panade.sheet.poi;

import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import panade.sheet.ColumnHelp;

/** Writes what helps to fill a sheet: notes at the heads, lists to choose from, cells that keep what is typed. */
final class HelpWriter {
    /** How many rows below the head offer a list. */
    private static final int ROWS = 500;

    private static final int NOTE_WIDTH = 4;
    private static final int NOTE_HEIGHT = 6;

    private HelpWriter() {}

    static void write(ColumnHelp help, XSSFSheet sheet) {
        if (!help.note().isEmpty()) {
            note(help, sheet);
        }
        if (help.isText()) {
            var style = sheet.getWorkbook().createCellStyle();
            style.setDataFormat(sheet.getWorkbook().createDataFormat().getFormat("@"));
            sheet.setDefaultColumnStyle(help.column(), style);
        }
        if (!help.choices().isEmpty() || !help.from().isEmpty()) {
            choices(help, sheet);
        }
    }

    private static void note(ColumnHelp help, XSSFSheet sheet) {
        int column = help.column();
        var anchor = new XSSFClientAnchor(0, 0, 0, 0, column + 1, 1, column + 1 + NOTE_WIDTH, 1 + NOTE_HEIGHT);
        var comment = sheet.createDrawingPatriarch().createCellComment(anchor);
        comment.setString(sheet.getWorkbook().getCreationHelper().createRichTextString(help.note()));
        comment.setAuthor("panade");
        sheet.getRow(0).getCell(column).setCellComment(comment);
    }

    private static void choices(ColumnHelp help, XSSFSheet sheet) {
        var helper = sheet.getDataValidationHelper();
        var constraint = help.from().isEmpty()
                ? helper.createExplicitListConstraint(help.choices().toArray(String[]::new))
                : helper.createFormulaListConstraint(help.from());
        var cells = new CellRangeAddressList(1, ROWS, help.column(), help.column());
        DataValidation validation = helper.createValidation(constraint, cells);
        validation.setSuppressDropDownArrow(true); // in this format the flag has the other sense (18.3.1.33)
        validation.setShowErrorBox(false);
        sheet.addValidationData(validation);
    }
}
