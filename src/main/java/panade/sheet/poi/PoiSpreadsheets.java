package panade.sheet.poi;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import panade.sheet.Book;
import panade.sheet.Grid;
import panade.sheet.Spreadsheets;

/** Office Open XML workbooks (ECMA-376) by way of Apache POI, which is loaded when first asked for. */
public final class PoiSpreadsheets implements Spreadsheets {
    @Override
    public byte[] write(Book book) {
        return BookWriter.write(book);
    }

    @Override
    public List<Grid> read(Path file) throws IOException {
        return GridReader.read(file);
    }
}
