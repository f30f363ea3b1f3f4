package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.model.Unproved;
import panade.testing.CommandRun;

/** What a person meets when the program itself fails: here, because the answers to its questions cannot be read. */
class FaultTest {
    @TempDir
    Path folder;

    private String err = "";

    @Test
    void aFaultOfOursIsToldInPlainWordsWithTheVersionAndWhatToSend() {
        assertThat(fail(() -> new IllegalStateException("gone\nwrong"))).isEqualTo(5);
        assertThat(err)
                .startsWith("A fault of ours, not of your documents: panade (not packaged) failed")
                .contains("IllegalStateException: gone\\nwrong")
                .contains("run the same command with --debug and send the whole command line")
                .doesNotContain("\tat ");
    }

    @Test
    void debugPrintsTraceVersionAndPlatform() {
        assertThat(fail(() -> new IllegalStateException("gone"), "--debug")).isEqualTo(5);
        assertThat(err)
                .contains("Java " + Runtime.version())
                .contains(System.getProperty("os.name") + " " + System.getProperty("os.version"))
                .contains("\tat panade.cli.interview.Dialogue.");
    }

    @Test
    void debugCountsTheBasesThatHadToBeWorkedOutDensely() {
        var blend = CommandRun.of("blend", "constraints/dumpling-filling.json", "--debug");
        assertThat(blend.messages().strip()).isEqualTo("Dense dictionaries made: 0.");
        // where no blend exists, small sets of bounds are tried on the exact simplex alone
        var none = CommandRun.of("blend", "constraints/taco-wish-list.json", "--debug");
        assertThat(none.messages().strip()).matches("Dense dictionaries made: [1-9][0-9]*\\.");
    }

    @Test
    void memoryAndStackThatAreUsedUpAreToldAsSuch() {
        assertThat(fail(() -> new OutOfMemoryError("Java heap space"))).isEqualTo(5);
        assertThat(err)
                .startsWith("Out of memory: the ")
                .contains(" MB that panade may use")
                .contains("-Xmx4g");
        assertThat(fail(() -> new StackOverflowError())).isEqualTo(5);
        assertThat(err).startsWith("Out of stack: ").contains("Expected fewer levels");
    }

    @Test
    void whatCannotBeProvedIsNoFaultOfOursInWhicheverThreadItCameUp() {
        assertThat(fail(() -> new Unproved("the pivots ran out"))).isEqualTo(6);
        assertThat(err)
                .startsWith("Not decided, neither a blend nor that there is none could be proved: the pivots ran out.")
                .doesNotContain("fault", "\tat ");
        assertThat(fail(() -> new CompletionException(new Unproved("the pivots ran out"))))
                .isEqualTo(6);
    }

    private int fail(Supplier<? extends Throwable> fault, String... options) {
        var in = new Reader() {
            @Override
            public int read(char[] text, int offset, int length) {
                var thrown = fault.get();
                if (thrown instanceof Error error) {
                    throw error;
                }
                throw (RuntimeException) thrown;
            }

            @Override
            public void close() {}
        };
        var told = new StringWriter();
        var words = new String[options.length + 2];
        words[0] = "new";
        words[1] = folder.resolve("mine").toString();
        System.arraycopy(options, 0, words, 2, options.length);
        int status = Main.run(in, new PrintWriter(new StringWriter()), new PrintWriter(told), words);
        err = told.toString();
        return status;
    }
}
