package panade.cli;

import java.io.IOException;
import java.io.Writer;
import panade.render.PlainText;

/**
 * What every word for people passes on its way out: the progress line leaves first, and nothing commands a terminal.
 */
final class ConsoleWriter extends Writer {
    private final Writer writer;
    private final Runnable before;
    private boolean returned;

    /**
     * A writer.
     *
     * @param before what is done before anything is written
     */
    ConsoleWriter(Writer writer, Runnable before) {
        this.writer = writer;
        this.before = before;
    }

    @Override
    public void write(char[] text, int offset, int length) throws IOException {
        if (length > 0) {
            before.run();
            var plain = new StringBuilder(length);
            for (int i = offset; i < offset + length; i++) {
                append(plain, text[i]);
            }
            writer.append(plain);
        }
    }

    /** A carriage return is let through only where it ends a line. */
    private void append(StringBuilder plain, char character) {
        if (returned) {
            returned = false;
            if (character == '\n') {
                plain.append("\r\n");
                return;
            }
            PlainText.append(plain, '\r');
        }
        if (character == '\n' || character == '\t') {
            plain.append(character);
        } else if (character == '\r') {
            returned = true;
        } else {
            PlainText.append(plain, character);
        }
    }

    @Override
    public void flush() throws IOException {
        writer.flush();
    }

    @Override
    public void close() throws IOException {
        writer.close();
    }
}
