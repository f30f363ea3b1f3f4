package panade.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The process's standard output, which remembers why it failed. {@code System.out} only tells that something did, and a
 * print writer on top of it not even that.
 */
final class StandardOutput extends OutputStream {
    private final OutputStream stream;
    private @Nullable IOException fault;

    StandardOutput() {
        this(new FileOutputStream(FileDescriptor.out));
    }

    StandardOutput(OutputStream stream) {
        this.stream = stream;
    }

    @Override
    public void write(int oneByte) throws IOException {
        write(new byte[] {(byte) oneByte}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int offset, int length) throws IOException {
        try {
            stream.write(bytes, offset, length);
        } catch (IOException e) {
            fault = e;
            throw e;
        }
    }

    /** Why the answer is not all there; empty when it is, or when its reader closed the pipe because it had enough. */
    Optional<String> fault() {
        return Optional.ofNullable(fault)
                .map(found -> String.valueOf(found.getMessage()))
                .filter(words -> !words.toLowerCase(Locale.ROOT).contains("pipe"));
    }
}
