package panade.harden;

import java.io.IOException;
import java.io.UncheckedIOException;
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
import org.jspecify.annotations.Nullable;
import panade.testing.CommandRun;

/**
 * A command on damaged documents.
 *
 * @param command its words; a path is written {@code @path}
 * @param files contents by path
 */
record Attack(long number, String command, Map<String, byte[]> files) {
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
            var run = LimitedRun.of(words(folder));
            return run == null ? "still at work after " + LimitedRun.SECONDS + " s" : fault(folder, run);
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

    private @Nullable String fault(Path folder, CommandRun run) throws IOException {
        var fault = LimitedRun.fault(run);
        return fault == null ? changed(folder) : fault;
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
