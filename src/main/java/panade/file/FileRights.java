package panade.file;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import org.jspecify.annotations.Nullable;

/**
 * Who may read and write a file that is to be replaced.
 *
 * @param attributes null where there is no such file, or no rights of that kind (POSIX) on its file system
 */
record FileRights(@Nullable PosixFileAttributes attributes) {
    static FileRights of(Path file) throws IOException {
        var view = Files.exists(file) ? Files.getFileAttributeView(file, PosixFileAttributeView.class) : null;
        return new FileRights(view == null ? null : view.readAttributes());
    }

    /** Makes an empty file with these rights; with the usual ones of a new file where there are none to keep. */
    void create(Path file) throws IOException {
        if (attributes == null) {
            Files.createFile(file);
            return;
        }
        var permissions = attributes.permissions();
        Files.createFile(file, PosixFilePermissions.asFileAttribute(permissions));
        var view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        keepOwners(view, attributes);
        view.setPermissions(permissions); // those that the process's own mask took away as well
    }

    private static void keepOwners(PosixFileAttributeView view, PosixFileAttributes kept) throws IOException {
        var made = view.readAttributes();
        try {
            if (!made.group().equals(kept.group())) {
                view.setGroup(kept.group());
            }
            if (!made.owner().equals(kept.owner())) {
                view.setOwner(kept.owner());
            }
        } catch (FileSystemException e) {
            // Not everybody may give a file to another user or group: then it is the writer's.
        }
    }
}
