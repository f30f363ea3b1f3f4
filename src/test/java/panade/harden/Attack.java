package panade.harden;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import panade.testing.CommandRun;

/**
 * A command on damaged documents.
 *
 * @param command its words; a path is written {@code @path}
 * @param files contents by path
 */
record Attack(long number, String command, Map<String, byte[]> files) {
    /** Of processor time of the thread that runs the command; of the clock, six times as much on a busy machine. */
    private static final long SECONDS = 10;

    private static final Pattern TRACE = Pattern.compile(
            "\\tat |Exception|\\b(?:java|panade|tools|org|com)\\.[a-z]+\\.|A fault of ours|Out of memory|Out of stack");

    /** The command and damage of a number; the same for the same number. */
    static Attack of(long number, List<Kitchen> corpus) {
        var random = new Random(number * 0x9E3779B97F4A7C15L);
        var kitchen = corpus.get(random.nextInt(3) == 0 ? random.nextInt(corpus.size()) : random.nextInt(2));
        var command = kitchen.commands().get(random.nextInt(kitchen.commands().size()));
        if (random.nextBoolean() && !kitchen.checked(command).isEmpty()) {
            command = "check " + kitchen.checked(command);
        }
        var files = new LinkedHashMap<>(kitchen.files());
        var mutation = new Mutation(random);
        var named = kitchen.named(command);
        for (int i = 1 + random.nextInt(2) * random.nextInt(2); i > 0; i--) {
            var all = new ArrayList<>(kitchen.files().keySet());
            var file = random.nextInt(3) > 0 && !named.isEmpty()
                    ? named.get(random.nextInt(named.size()))
                    : all.get(random.nextInt(all.size()));
            files.put(file, mutation.damaged(file, Objects.requireNonNull(files.get(file))));
        }
        return new Attack(number, command, files);
    }

    /** What the program did wrong, in a few words; null for nothing. */
    @Nullable
    String fault(Path folder) {
        try {
            write(folder);
            var run = run(folder);
            return run == null ? "still at work after " + SECONDS + " s" : fault(folder, run);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write(Path folder) throws IOException {
        for (var file : files.entrySet()) {
            var path = folder.resolve(file.getKey());
            Files.createDirectories(Objects.requireNonNull(path.getParent()));
            Files.write(path, file.getValue());
        }
    }

    private String[] words(Path folder) {
        return Arrays.stream((command + " --debug").split(" "))
                .map(word ->
                        word.startsWith("@") ? folder.resolve(word.substring(1)).toString() : word)
                .toArray(String[]::new);
    }

    /** What came of it; null where it takes too long. */
    private @Nullable CommandRun run(Path folder) {
        var answer = new CompletableFuture<CommandRun>();
        var thread = new Thread(() -> {
            try {
                answer.complete(CommandRun.of(words(folder)));
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

    private @Nullable String fault(Path folder, CommandRun run) throws IOException {
        if (!List.of(0, 2, 3, 4, 6).contains(run.status())) {
            return "ended with " + run.status() + ": " + run.messages();
        }
        if (run.status() != 0 && run.messages().isBlank() && run.output().isBlank()) {
            return "ended with " + run.status() + " without a word";
        }
        var trace = TRACE.matcher(run.messages());
        if (trace.find()) {
            return "tells its inner parts: " + run.messages();
        }
        if (run.messages().length() > 200_000) {
            return "tells " + run.messages().length() + " characters";
        }
        return changed(folder);
    }

    /** What was modified or left behind. */
    private @Nullable String changed(Path folder) throws IOException {
        try (var paths = Files.walk(folder)) {
            for (var path : paths.filter(Files::isRegularFile).toList()) {
                var name = folder.relativize(path).toString().replace('\\', '/');
                var was = files.get(name);
                if (was == null ? !name.equals("out.html") : !Arrays.equals(was, Files.readAllBytes(path))) {
                    return (was == null ? "left behind " : "modified ") + name;
                }
            }
        }
        return null;
    }

    /** Empties a folder for the next attack. */
    static void clear(Path folder) {
        try (var paths = Files.walk(folder)) {
            for (var path : paths.sorted(Comparator.reverseOrder()).toList()) {
                if (!path.equals(folder)) {
                    Files.deleteIfExists(path);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
