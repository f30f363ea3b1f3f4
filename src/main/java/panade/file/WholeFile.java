package panade.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.function.Consumer;

/** Writes a file so that nobody ever finds half of it: beside its place first, then moved there. */
public final class WholeFile {
    /** What writing a file consists of. */
    enum Step {
        CREATED,
        WRITTEN,
        MOVED
    }

    private WholeFile() {}

    /**
     * Writes a file, in place of what may be there, whose rights it takes over. Where the file is a link, it stays one,
     * and what it leads to is written.
     *
     * @throws IOException when it cannot be written; what was there is then still there
     */
    public static void write(Path file, byte[] content) throws IOException {
        if (Files.isDirectory(file)) {
            throw new IOException("this is a folder");
        }
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            Files.write(file, content); // a terminal or a pipe, which nothing may be moved over
            return;
        }
        write(FileLinks.followed(file), content, step -> {});
    }

    /**
     * Writes the file at the end of all links.
     *
     * @param told what has just been done, so that tests can end the process there
     */
    static void write(Path place, byte[] content, Consumer<Step> told) throws IOException {
        if (Files.exists(place) && !Files.isWritable(place)) {
            throw new AccessDeniedException(place.toString());
        }
        Leftovers.clear(place);
        // Not a temporary file of the system's, which only its owner could read.
        var beside = place.resolveSibling(Leftovers.name(place));
        try {
            FileRights.of(place).create(beside);
            told.accept(Step.CREATED);
            // synced, so that a machine that loses its power just after the move has not moved an empty file
            Files.write(beside, content, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.SYNC);
            told.accept(Step.WRITTEN);
            move(beside, place);
            told.accept(Step.MOVED);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /** The same with text, in UTF-8. */
    public static void write(Path file, String text) throws IOException {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /**
     * Keeps a copy of a file beside it, under a name that is free.
     *
     * @return where the copy is
     */
    public static Path keepOld(Path file) throws IOException {
        var name = file.getFileName() + ".old";
        var copy = file.resolveSibling(name);
        for (int i = 2; Files.exists(copy); i++) {
            copy = file.resolveSibling(name + i);
        }
        return Files.copy(file, copy);
    }
}
