package panade.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;

/** Folders that are there as long as the tests run: for what several test classes share, where no TempDir reaches. */
public final class TemporaryFolders {
    private TemporaryFolders() {}

    /** A new folder, deleted with all that is in it when the process ends. */
    public static Path create(String name) {
        try {
            var folder = Files.createTempDirectory(name);
            Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
            return folder;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static void delete(Path folder) {
        try (var paths = Files.walk(folder)) {
            for (var path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        } catch (IOException | UncheckedIOException e) {
            // The browser may still be clearing its own files away.
        }
    }
}
