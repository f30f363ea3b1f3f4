package panade.intake;

import java.nio.file.Path;
import java.util.List;
import panade.intake.table.Change;
import panade.intake.table.Guess;

/**
 * What taking a file in would do; nothing is written yet.
 *
 * @param files documents to write
 * @param guesses what columns were taken for because of their heads
 * @param previews the first rows as they were understood
 * @param notes what was not taken, and why
 * @param untaken rows that could not be taken: where, why, and what was expected
 * @param unsaid allergens: names of ingredients for which nobody says what they carry
 * @param differing what becomes of differences
 */
public record Intake(
        List<Document> files,
        List<Guess> guesses,
        List<Preview> previews,
        List<String> notes,
        List<String> untaken,
        List<String> unsaid,
        Request.Differing differing) {
    public Intake {
        files = List.copyOf(files);
        guesses = List.copyOf(guesses);
        previews = List.copyOf(previews);
        notes = List.copyOf(notes);
        untaken = List.copyOf(untaken);
        unsaid = List.copyOf(unsaid);
    }

    /**
     * A document.
     *
     * @param exists whether it replaces one that is there
     * @param changes what is different in it
     */
    public record Document(Path file, String text, boolean exists, List<Change> changes) {
        public Document {
            changes = List.copyOf(changes);
        }

        /** Whether anything that was there would be different or gone. */
        public boolean differs() {
            return changes.stream().anyMatch(change -> change.sort() != Change.Sort.ADDED);
        }
    }

    /** Whether it must be refused, because something differs and nobody said what to do then. */
    public boolean isRefused() {
        return differing == Request.Differing.REFUSED && files.stream().anyMatch(Document::differs);
    }

    /** Documents that come out different from what is there. */
    public List<Document> toWrite() {
        return files.stream()
                .filter(document -> !document.exists() || isWritten(document))
                .toList();
    }

    private boolean isWritten(Document document) {
        return document.changes().stream()
                .anyMatch(change -> change.sort() == Change.Sort.ADDED || differing == Request.Differing.UPDATED);
    }
}
