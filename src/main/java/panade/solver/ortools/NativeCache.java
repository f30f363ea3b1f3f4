package panade.solver.ortools;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;

/**
 * Keeps unpacked libraries in private folders of one user's. A folder appears whole or not at all, and is checked each
 * time it is asked for; one that fails the check makes way for a fresh one.
 */
final class NativeCache {
    private static final String PRIVATE = "rwx------";
    private static final String UNFINISHED = "unpacking-";
    private static final Duration ABANDONED = Duration.ofHours(1);

    private final Path home;

    NativeCache(Path home) {
        this.home = home.toAbsolutePath();
    }

    /** The folder with an archive's libraries, unpacked now if it is not there or not sound. */
    Path folder(LibraryArchive archive, String label) throws IOException {
        Files.createDirectories(home, ownerOnly());
        clearLeftovers();
        var folder = home.resolve(label + "-" + archive.checksum());
        if (!isSound(folder, archive.libraries())) {
            fill(folder, archive);
        }
        return folder;
    }

    /** What an unpacking that was killed left behind; one that is at work has written something lately. */
    private void clearLeftovers() {
        var before = FileTime.from(Instant.now().minus(ABANDONED));
        try (var leftovers = Files.newDirectoryStream(home, UNFINISHED + "*")) {
            for (var leftover : leftovers) {
                if (Files.getLastModifiedTime(leftover, LinkOption.NOFOLLOW_LINKS)
                                .compareTo(before)
                        < 0) {
                    delete(leftover);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            // Another process may be clearing them too, and nothing depends on it.
        }
    }

    private FileAttribute<?>[] ownerOnly() {
        return hasModes()
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(PRIVATE))
                }
                : new FileAttribute<?>[0];
    }

    private boolean hasModes() {
        return home.getFileSystem().supportedFileAttributeViews().contains("posix");
    }

    private void fill(Path folder, LibraryArchive archive) throws IOException {
        var fresh = Files.createTempDirectory(home, UNFINISHED, ownerOnly());
        try {
            archive.unpackInto(fresh);
            if (!isSound(folder, archive.libraries())) {
                clear(folder);
                settle(fresh, folder, archive.libraries());
            }
        } finally {
            delete(fresh);
        }
    }

    /** Renames before deleting, so that no other process ever finds a folder half deleted. */
    private void clear(Path folder) throws IOException {
        if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            var aside = Files.createTempDirectory(home, UNFINISHED, ownerOnly());
            try {
                Files.move(folder, aside.resolve("damaged"), StandardCopyOption.ATOMIC_MOVE);
            } finally {
                delete(aside);
            }
        }
    }

    /** The loser of a race uses the winner's folder. Java has no one exception for a folder that is in the way. */
    private void settle(Path fresh, Path folder, List<LibraryArchive.Library> libraries) throws IOException {
        try {
            Files.move(fresh, folder, StandardCopyOption.ATOMIC_MOVE);
        } catch (FileSystemException e) {
            if (!isSound(folder, libraries)) {
                throw e;
            }
        }
    }

    private boolean isSound(Path folder, List<LibraryArchive.Library> libraries) throws IOException {
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS) || !isPrivate(folder)) {
            return false;
        }
        for (var library : libraries) {
            var file = folder.resolve(library.fileName());
            if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || !library.isAt(file)) {
                return false;
            }
        }
        return true;
    }

    private boolean isPrivate(Path folder) throws IOException {
        return !hasModes()
                || (PosixFilePermissions.toString(Files.getPosixFilePermissions(folder))
                                .equals(PRIVATE)
                        && isOurs(folder));
    }

    /** Asks who owns a file made just now: the user's name, as Java tells it, need not be the owner's. */
    private boolean isOurs(Path folder) throws IOException {
        var probe = Files.createTempFile(home, UNFINISHED, null);
        try {
            return Files.getOwner(folder, LinkOption.NOFOLLOW_LINKS).equals(Files.getOwner(probe));
        } finally {
            Files.deleteIfExists(probe);
        }
    }

    private static void delete(Path folder) throws IOException {
        if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            try (var paths = Files.walk(folder)) {
                for (var path : paths.sorted(Comparator.reverseOrder()).toList()) {
                    Files.deleteIfExists(path);
                }
            }
        }
    }
}
