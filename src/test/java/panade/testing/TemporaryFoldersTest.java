package panade.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
        var run = JavaProcess.run(List.of(), TemporaryFoldersTest.class);
        var folder = run.output().strip();
        assertThat(run.status()).as(run.messages()).isZero();
        assertThat(folder).contains("panade-testing");
        assertThat(Path.of(folder)).doesNotExist();
    }
}
