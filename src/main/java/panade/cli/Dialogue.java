package panade.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.function.Function;
import panade.render.PlainText;

/** Asks until an answer can be understood. */
final class Dialogue {
    /** The answers came to an end before the questions did. */
    static final class Ended extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private final BufferedReader in;
    private final PrintWriter out;

    Dialogue(BufferedReader in, PrintWriter out) {
        this.in = in;
        this.out = out;
    }

    /** Says something between questions. */
    void say(String words) {
        out.println(PlainText.line(words));
    }

    /**
     * The answer to a question.
     *
     * @param usual what an empty answer stands for
     * @param expected what to tell when the answer is not understood
     * @param reader understands an answer, or gives nothing
     */
    <T> T ask(String question, String usual, String expected, Function<String, Optional<T>> reader) {
        while (true) {
            var answer = line(question + (usual.isEmpty() ? ": " : " [" + usual + "]: "));
            var understood = reader.apply(answer.isEmpty() ? usual : answer);
            if (understood.isPresent()) {
                return understood.get();
            }
            out.println("  " + PlainText.line(expected));
        }
    }

    /** The answer as it is, which may be empty. */
    String text(String question, String usual) {
        return ask(question, usual, "", Optional::of);
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
