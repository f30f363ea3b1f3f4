package panade.file;

import java.io.IOException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where symbolic links lead, whether or not something is there yet. */
final class FileLinks {
    /** As many as Linux follows. */
    private static final int MAX_LINKS = 40;

    private FileLinks() {}

    /** The file at the end of all links. */
    static Path followed(Path file) throws IOException {
        var place = file.toAbsolutePath();
        for (int i = 0; i < MAX_LINKS; i++) {
            if (!Files.isSymbolicLink(place)) {
                return place;
            }
            place = place.resolveSibling(Files.readSymbolicLink(place));
        }
        throw new FileSystemLoopException(file.toString());
    }
}
