package panade.sheet;

import java.util.List;

/** A spreadsheet file before anybody writes it; names of sheets are ours, at most 31 letters without marks. */
public record Book(List<Sheet> sheets) {
    public Book {
        sheets = List.copyOf(sheets);
    }
}
