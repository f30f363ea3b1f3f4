package panade.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes a file so that nobody ever finds half of it: beside its place first, then moved there. */
public final class WholeFile {
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
        var place = FileLinks.followed(file);
        if (Files.exists(place) && !Files.isWritable(place)) {
            throw new AccessDeniedException(place.toString());
        }
        // Not a temporary file of the system's, which only its owner could read.
        var beside = place.resolveSibling("." + place.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            FileRights.of(place).create(beside);
            Files.write(beside, content, StandardOpenOption.TRUNCATE_EXISTING);
            move(beside, place);
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
