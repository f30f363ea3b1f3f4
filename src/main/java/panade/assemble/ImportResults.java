package panade.assemble;

import panade.intake.Intake;
import panade.intake.Request.Differing;
import panade.intake.table.Change;
import panade.result.ImportResult;
import panade.result.ImportResult.Kind;

/** Makes the result of {@code import}. */
public final class ImportResults {
    private ImportResults() {}

    /**
     * The result.
     *
     * @param written whether the documents were written
     */
    public static ImportResult of(Intake intake, boolean written) {
        return new ImportResult(
                written,
                intake.isRefused(),
                intake.files().stream().map(ImportResults::document).toList(),
                intake.guesses().stream()
                        .map(guess -> new ImportResult.Guess(guess.sheet(), guess.heading(), guess.words()))
                        .toList(),
                intake.previews().stream()
                        .map(seen -> new ImportResult.Preview(seen.of(), seen.columns(), seen.rows(), seen.more()))
                        .toList(),
                intake.untaken(),
                intake.notes(),
                intake.unsaid(),
                intake.differing() == Differing.KEPT,
                intake.toWrite().isEmpty());
    }

    private static ImportResult.Document document(Intake.Document document) {
        return new ImportResult.Document(
                document.file().toString(),
                !document.exists(),
                document.changes().stream().map(ImportResults::change).toList());
    }

    private static ImportResult.Change change(Change change) {
        return new ImportResult.Change(
                Kind.valueOf(change.sort().name()), change.of(), change.field(), change.before(), change.after());
    }
}
