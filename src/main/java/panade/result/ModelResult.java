package panade.result;

import java.util.List;

/**
 * The size of a model that was written to a file.
 *
 * @param whole how many of the columns are whole numbers
 * @param remarks on the documents
 */
public record ModelResult(int columns, int rows, int whole, List<RemarkLine> remarks) {
    public ModelResult {
        remarks = List.copyOf(remarks);
    }
}
