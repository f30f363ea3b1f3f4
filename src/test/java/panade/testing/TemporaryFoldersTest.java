package panade.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Tests leave nothing in the temporary folder. */
class TemporaryFoldersTest {
    /** Makes a folder with a file in it and prints where; the process ends with it there. */
    public static void main(String[] arguments) throws IOException {
        var folder = TemporaryFolders.create("panade-testing");
        Files.writeString(Files.createDirectory(folder.resolve("inner")).resolve("page.html"), "x");
        System.out.println(folder);
    }

    @Test
    void aFolderIsGoneWhenTheProcessHasEnded() throws Exception {
        var process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        TemporaryFoldersTest.class.getName())
                .start();
        var folder = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        assertThat(process.waitFor()).isZero();
        assertThat(folder).contains("panade-testing");
        assertThat(Path.of(folder)).doesNotExist();
    }
}
