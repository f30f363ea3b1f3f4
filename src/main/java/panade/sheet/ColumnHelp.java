package panade.sheet;

import java.util.List;

/**
 * What helps to fill a column.
 *
 * @param column counted from 0
 * @param note what the column means, shown at its head
 * @param choices words to choose from in each cell below; others may be written too
 * @param from where such words stand, as a formula names cells; empty unless they stand on a sheet
 * @param isText whether what is typed stays as it is: a spreadsheet program makes 0.18 of 18 % and a day of 3/4 else
 */
public record ColumnHelp(int column, String note, List<String> choices, String from, boolean isText) {
    public ColumnHelp {
        choices = List.copyOf(choices);
    }
}
