package panade.sheet;

import java.io.IOException;

/**
 * A workbook holds more than anybody's tables of ingredients or prices; the message says where and how much is read.
 */
public final class WorkbookTooLarge extends IOException {
    private static final long serialVersionUID = 1;

    /** With one clause about what is too large, without a full stop. */
    public WorkbookTooLarge(String message) {
        super(message);
    }
}
