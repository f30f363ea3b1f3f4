package panade.harden;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import panade.testing.CommandRun;

/** A command in a thread of its own, given up where it takes too long, and what is wrong with how it ended. */
final class LimitedRun {
    /** Of processor time of the thread that runs the command; of the clock, six times as much on a busy machine. */
    static final long SECONDS = 10;

    /** More would fill a terminal many times over. */
    private static final int MOST_MESSAGES = 200_000;

    private static final Pattern INNER_PARTS = Pattern.compile(
            "\tat |Exception|\\b(?:java|panade|tools|org|com)\\.[a-z]+\\.|A fault of ours|Out of memory|Out of stack");

    private LimitedRun() {}

    /** What came of it; null where it takes too long. */
    static @Nullable CommandRun of(String... words) {
        var answer = new CompletableFuture<CommandRun>();
        var thread = new Thread(() -> {
            try {
                answer.complete(CommandRun.of(words));
            } catch (Throwable thrown) {
                answer.completeExceptionally(thrown);
            }
        });
        thread.setDaemon(true);
        thread.start();
        for (int waited = 0; waited < 6 * SECONDS && processorSeconds(thread) < SECONDS; waited++) {
            var found = waited(answer);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private static @Nullable CommandRun waited(CompletableFuture<CommandRun> answer) {
        try {
            return answer.get(1, TimeUnit.SECONDS);
        } catch (TimeoutException e) {
            return null;
        } catch (ExecutionException | InterruptedException e) {
            return new CommandRun(5, "", "Exception " + e.getCause());
        }
    }

    private static long processorSeconds(Thread thread) {
        return ManagementFactory.getThreadMXBean().getThreadCpuTime(thread.getId()) / 1_000_000_000;
    }

    /** What is wrong with how it ended, in a few words; null for nothing. */
    static @Nullable String fault(@Nullable CommandRun run) {
        if (run == null) {
            return "still at work after " + SECONDS + " s";
        }
        if (!List.of(0, 2, 3, 4, 6).contains(run.status())) {
            return "ended with " + run.status() + ": " + run.messages();
        }
        if (run.status() != 0 && run.messages().isBlank() && run.output().isBlank()) {
            return "ended with " + run.status() + " without a word";
        }
        if (INNER_PARTS.matcher(run.messages()).find()) {
            return "tells its inner parts: " + run.messages();
        }
        return run.messages().length() > MOST_MESSAGES
                ? "tells " + run.messages().length() + " characters"
                : null;
    }
}
