package panade.sheet;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Reads and writes spreadsheet files. */
public interface Spreadsheets {
    /** The bytes of a file; the same book gives the same bytes. */
    byte[] write(Book book);

    /**
     * The sheets of a file, as they were last calculated.
     *
     * @throws IOException when it is no spreadsheet file
     */
    List<Grid> read(Path file) throws IOException;
}
