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

    /**
     * A kitchen that was written as a workbook instead.
     *
     * @param file where
     * @param notes what the workbook does not keep of the documents, in whole sentences
     * @param remarks on the brief
     */
    public record Kitchen(String file, List<String> notes, List<RemarkLine> remarks) {
        public Kitchen {
            notes = List.copyOf(notes);
            remarks = List.copyOf(remarks);
        }
    }
}
