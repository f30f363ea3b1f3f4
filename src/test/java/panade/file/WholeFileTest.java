package panade.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What becomes of a file's rights and links when it is written anew. */
class WholeFileTest {
    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void name() {
        assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
        file = folder.resolve("prices.csv");
    }

    @Test
    void aFileKeepsItsRights() throws IOException {
        for (var rights : new String[] {"rw-------", "rw-rw----", "rw-rw-rw-", "rwx------"}) {
            Files.writeString(file, "old");
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(rights));
            WholeFile.write(file, "new");
            assertThat(file).hasContent("new");
            assertThat(rights(file)).isEqualTo(rights);
            assertThat(rights(WholeFile.keepOld(file))).startsWith(rights.substring(0, 3));
        }
        assertThat(folder.toFile().list()).hasSize(5);
    }

    @Test
    void aNewFileHasTheRightsThatAnyNewFileHas() throws IOException {
        WholeFile.write(file, "new");
        var other = Files.createFile(folder.resolve("other"));
        assertThat(rights(file)).isEqualTo(rights(other));
    }

    @Test
    void aFileThatMayNotBeWrittenToStays() throws IOException {
        Files.writeString(file, "old");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
        assumeFalse(Files.isWritable(file), "somebody who may write everything");
        assertThatThrownBy(() -> WholeFile.write(file, "new")).isInstanceOf(IOException.class);
        assertThat(file).hasContent("old");
    }

    @Test
    void aLinkStaysALinkWhetherOrNotItLeadsToAFile() throws IOException {
        var elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Files.createSymbolicLink(folder.resolve("middle"), Path.of("elsewhere/true.csv"));
        Files.createSymbolicLink(file, Path.of("middle"));
        for (var text : new String[] {"first", "second"}) {
            WholeFile.write(file, text);
            assertThat(Files.isSymbolicLink(file)).isTrue();
            assertThat(elsewhere.resolve("true.csv")).hasContent(text);
        }
        assertThat(elsewhere.toFile().list()).containsExactly("true.csv");
    }

    @Test
    void linksThatLeadInACircleAreRefused() throws IOException {
        Files.createSymbolicLink(file, Path.of("other"));
        Files.createSymbolicLink(folder.resolve("other"), file);
        assertThatThrownBy(() -> WholeFile.write(file, "new")).isInstanceOf(IOException.class);
        assertThat(folder.toFile().list()).hasSize(2);
    }

    private static String rights(Path file) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    }
}
