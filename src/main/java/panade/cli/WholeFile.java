package panade.cli;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes a file whole or not at all: what was there before stays until the new text is safe on the disk. */
final class WholeFile {
    private WholeFile() {}

    static void write(Path file, String text) throws IOException {
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            Files.writeString(file, text); // a terminal or a pipe, which nothing may be moved over
            return;
        }
        var target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        var draft = target.resolveSibling(
                "." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            Files.writeString(draft, text, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            move(draft, target);
        } finally {
            Files.deleteIfExists(draft);
        }
    }

    private static void move(Path draft, Path file) throws IOException {
        try {
            Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException slower) {
            Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
