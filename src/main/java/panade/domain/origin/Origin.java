package panade.domain.origin;

/**
 * Where something was written.
 *
 * @param file the document's path as the user would type it
 * @param line counted from 1; 0 when the whole document is meant
 * @param column counted from 1, in characters
 * @param pointer JSON Pointer (RFC 6901) into the document
 */
public record Origin(String file, int line, int column, String pointer) {
    /**
     * File, line, column and pointer if there is one; only the option's name for what was typed on the command line.
     */
    public String place() {
        if (line == 0) {
            return file;
        }
        var place = file + ":" + line + ":" + column;
        return pointer.isEmpty() ? place : place + ": " + pointer;
    }
}
