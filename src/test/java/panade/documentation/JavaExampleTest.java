package panade.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.apache.commons.numbers.core.NativeOperators;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.api.Panade;

/** The manual's Java example, compiled and run as it stands there, prints what the page says it prints. */
class JavaExampleTest {
    private static final Pattern EXAMPLE =
            Pattern.compile("```java\\n(.*?)```\\n.*?```text\\n(.*?)```", Pattern.DOTALL);

    @TempDir
    private Path folder;

    @Test
    void the_example_prints_what_it_says() throws IOException, ReflectiveOperationException {
        var example = EXAMPLE.matcher(Files.readString(Pages.MANUAL.resolve("java.md")));
        assertThat(example.find()).isTrue();
        var source = Files.writeString(folder.resolve("Cheapest.java"), example.group(1));
        var messages = new ByteArrayOutputStream();
        int status = ToolProvider.getSystemJavaCompiler()
                .run(null, messages, messages, "-d", folder.toString(), "-cp", classPath(), source.toString());
        assertThat(status).as(messages.toString(StandardCharsets.UTF_8)).isZero();
        assertThat(printed()).isEqualTo(example.group(2));
    }

    /**
     * Where panade is, and the libraries whose types stand in its results: all that the example is compiled against.
     */
    private static String classPath() {
        return Stream.of(Panade.class, BigFraction.class, NativeOperators.class, JsonInclude.class)
                .map(type -> type.getProtectionDomain().getCodeSource().getLocation())
                .map(URL::getPath)
                .collect(Collectors.joining(File.pathSeparator));
    }

    private String printed() throws IOException, ReflectiveOperationException {
        var standard = System.out;
        var out = new ByteArrayOutputStream();
        try (var loader = new URLClassLoader(
                        new URL[] {folder.toUri().toURL()}, getClass().getClassLoader());
                var stream = new PrintStream(out, true, StandardCharsets.UTF_8)) {
            System.setOut(stream);
            var main = loader.loadClass("Cheapest").getDeclaredMethod("main", String[].class);
            main.setAccessible(true);
            main.invoke(null, (Object) new String[0]);
        } finally {
            System.setOut(standard);
        }
        return out.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }
}
