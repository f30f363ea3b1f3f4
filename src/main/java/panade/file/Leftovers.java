package panade.file;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.UUID;

/** Files that a process which was killed left beside the one it was writing. */
final class Leftovers {
    private static final Duration ABANDONED = Duration.ofHours(1);
    private static final String END = ".part";

    private Leftovers() {}

    /** A new name for what is written beside a file. */
    static String name(Path file) {
        return start(file) + UUID.randomUUID() + END;
    }

    private static String start(Path file) {
        return "." + file.getFileName() + ".";
    }

    /** Takes away what is left of earlier writings of a file; one that is at work has written something lately. */
    static void clear(Path file) {
        var before = FileTime.from(Instant.now().minus(ABANDONED));
        var folder = Objects.requireNonNullElse(file.getParent(), Path.of(""));
        int length = start(file).length() + UUID.randomUUID().toString().length() + END.length();
        try (var all = Files.newDirectoryStream(folder, each -> isOf(file, each, length))) {
            for (var leftover : all) {
                if (Files.getLastModifiedTime(leftover, LinkOption.NOFOLLOW_LINKS)
                                .compareTo(before)
                        < 0) {
                    Files.deleteIfExists(leftover);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            // Nothing depends on it, and what is wrong with the folder shows when it is written to.
        }
    }

    private static boolean isOf(Path file, Path each, int length) {
        var name = each.getFileName().toString();
        return name.startsWith(start(file)) && name.endsWith(END) && name.length() == length;
    }
}
