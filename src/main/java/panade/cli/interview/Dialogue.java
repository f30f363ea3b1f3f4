package panade.cli.interview;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.apache.commons.text.WordUtils;
import panade.render.PlainText;

/**
 * Asks until an answer can be understood. All answers are kept as they were given, so that questions can be asked again
 * from the first: an answer that is kept is taken in silence. That is how somebody goes back a question, or goes on
 * another day.
 */
public final class Dialogue {
    private static final String BACK = "back";
    private static final int WIDTH = 96;

    /**
     * What was answered.
     *
     * @param question as it was asked
     * @param text the answer as typed
     */
    public record Answer(String question, String text) {}

    /** The answers came to an end before the questions did. */
    public static final class Ended extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    /** Somebody wants the question before once more. */
    private static final class Back extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private final BufferedReader in;
    private final PrintWriter out;
    private final List<Answer> given;
    private final Consumer<List<Answer>> kept;
    private int taken;

    /**
     * A dialogue.
     *
     * @param earlier answers to begin with
     * @param kept is handed all answers after each new one
     */
    public Dialogue(BufferedReader in, PrintWriter out, List<Answer> earlier, Consumer<List<Answer>> kept) {
        this.in = in;
        this.out = out;
        this.given = new ArrayList<>(earlier);
        this.kept = kept;
    }

    /** Asks all questions, and again from the first whenever somebody goes back. */
    <T> T hold(Supplier<T> questions) {
        while (true) {
            taken = 0;
            try {
                return questions.get();
            } catch (Back e) {
                out.println("  Before, you said: "
                        + PlainText.line(given.remove(given.size() - 1).text()));
                kept.accept(List.copyOf(given));
            }
        }
    }

    /** Says something between questions. */
    void say(String words) {
        if (taken == given.size()) {
            var indent = words.startsWith("  ") ? "  " : "";
            out.println(indent + WordUtils.wrap(PlainText.line(words).strip(), WIDTH, "\n    ", false));
        }
    }

    /**
     * The answer to a question.
     *
     * @param usual what an empty answer stands for
     * @param expected what to tell when the answer is not understood
     * @param reader understands an answer, or gives nothing
     */
    <T> T ask(String question, String usual, String expected, Function<String, Optional<T>> reader) {
        var earlier = earlier(question, usual, reader);
        if (earlier.isPresent()) {
            return earlier.get();
        }
        while (true) {
            var answer = line(question + (usual.isEmpty() ? ": " : " [" + usual + "]: "));
            var understood = reader.apply(answer.isEmpty() ? usual : answer);
            if (answer.toLowerCase(Locale.ROOT).equals(BACK)) {
                goBack();
            } else if (understood.isPresent()) {
                given.add(new Answer(question, answer));
                taken++;
                kept.accept(List.copyOf(given));
                return understood.get();
            } else {
                out.println("  " + PlainText.line(expected));
            }
        }
    }

    private void goBack() {
        if (!given.isEmpty()) {
            throw new Back();
        }
        out.println("  This is the first question.");
    }

    /** An answer that is kept, if it still fits; where it does not, those behind it are answers to something else. */
    private <T> Optional<T> earlier(String question, String usual, Function<String, Optional<T>> reader) {
        if (taken == given.size()) {
            return Optional.empty();
        }
        var answer = given.get(taken);
        if (answer.question().equals(question)) {
            var understood = reader.apply(answer.text().isEmpty() ? usual : answer.text());
            if (understood.isPresent()) {
                taken++;
                return understood;
            }
        }
        given.subList(taken, given.size()).clear();
        return Optional.empty();
    }

    /** The answer as it is, which may be empty. */
    String text(String question, String usual) {
        return ask(question, usual, "", Optional::of);
    }

    /** Whether somebody says yes; no is usual. */
    public boolean agrees(String question) {
        return agrees(question, "no");
    }

    /** The same where an empty answer stands for either. */
    public boolean agrees(String question, String usual) {
        return ask(question, usual, "Expected yes or no.", text -> switch (text.toLowerCase(Locale.ROOT)) {
            case "y", "yes" -> Optional.of(true);
            case "n", "no" -> Optional.of(false);
            default -> Optional.empty();
        });
    }

    private String line(String prompt) {
        out.print(PlainText.line(prompt));
        out.flush();
        try {
            var line = in.readLine();
            if (line == null) {
                out.println();
                throw new Ended();
            }
            return line.strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
