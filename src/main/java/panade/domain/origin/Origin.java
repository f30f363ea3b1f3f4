package panade.domain.origin;

/**
 * Where something was written.
 *
 * @param file the document's path as the user would type it
 * @param line counted from 1; 0 when the whole document is meant
 * @param column counted from 1, in characters
 * @param pointer JSON Pointer (RFC 6901) into the document
 * @param cell in a workbook the sheet and the cell, such as {@code Bounds!C5}, whose row and column are the line and
 *     the column; else empty
 */
public record Origin(String file, int line, int column, String pointer, String cell) {
    /** A place in a text. */
    public Origin(String file, int line, int column, String pointer) {
        this(file, line, column, pointer, "");
    }

    /** The sheet of a workbook; empty in a text. */
    public String sheet() {
        return cell.isEmpty() ? "" : cell.substring(0, cell.lastIndexOf('!'));
    }

    /** The line, or the cell in a workbook. */
    public String spot() {
        return cell.isEmpty() ? "line " + line : cell;
    }

    /**
     * File, line, column and pointer if there is one; in a workbook file, sheet and cell; only the option's name for
     * what was typed on the command line.
     */
    public String place() {
        if (line == 0) {
            return file;
        }
        if (!cell.isEmpty()) {
            return file + ", " + cell; // a pointer means nothing to whoever looks at a sheet
        }
        var place = file + ":" + line + ":" + column;
        return pointer.isEmpty() ? place : place + ": " + pointer;
    }
}
