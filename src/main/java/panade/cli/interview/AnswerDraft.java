package panade.cli.interview;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import panade.cli.interview.Dialogue.Answer;
import panade.file.WholeFile;

/** Answers on disk while questions are still open: a line for each question and its answer, with a tab between. */
public final class AnswerDraft {
    private final Path file;
    private boolean kept;

    /**
     * A draft.
     *
     * @param what the questions are for; answers to other questions are kept apart
     */
    public AnswerDraft(Path folder, Interview.Purpose what) {
        this.file = folder.resolve(
                switch (what) {
                    case KITCHEN -> "panade-new.draft";
                    case PRODUCT -> "panade-new-product.draft";
                    case INGREDIENT -> "panade-new-ingredient.draft";
                });
    }

    public Path file() {
        return file;
    }

    /** Whether the last answers are on disk. */
    public boolean isKept() {
        return kept;
    }

    /** What was answered before; nothing where there is no draft, or none that can be read. */
    public List<Answer> read() {
        try {
            return Files.readAllLines(file, StandardCharsets.UTF_8).stream()
                    .map(line -> line.split("\t", 2))
                    .filter(parts -> parts.length == 2)
                    .map(parts -> new Answer(parts[0], parts[1]))
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    /** Keeps them; where nothing can be written the questions go on, and the end of them says so. */
    public void keep(List<Answer> answers) {
        var text = new StringBuilder();
        answers.forEach(answer -> text.append(answer.question().replace('\t', ' '))
                .append('\t')
                .append(answer.text())
                .append('\n'));
        try {
            Files.createDirectories(Objects.requireNonNull(file.toAbsolutePath().getParent()));
            WholeFile.write(file, text.toString());
            kept = true;
        } catch (IOException e) {
            kept = false;
        }
    }

    public void delete() {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            kept = true; // it stays, and is offered the next time
        }
    }
}
