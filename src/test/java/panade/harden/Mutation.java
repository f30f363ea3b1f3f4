package panade.harden;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Damage to a document: to its bytes, or to what it says while it stays JSON, a table or a workbook. */
final class Mutation {
    private final Random random;

    Mutation(Random random) {
        this.random = random;
    }

    /** One to four kinds of damage. */
    byte[] damaged(String file, byte[] content) {
        var damaged = content;
        for (int i = 1 + random.nextInt(4) * random.nextInt(2); i > 0; i--) {
            damaged = once(file, damaged);
        }
        return damaged;
    }

    private byte[] once(String file, byte[] content) {
        if (file.endsWith(".xlsx")) {
            return random.nextInt(3) == 0 ? bytes(content) : new BookMutation(random).damaged(content);
        }
        if (random.nextInt(3) == 0) {
            return bytes(content);
        }
        return file.endsWith(".csv") ? cells(content) : new JsonMutation(random).damaged(content, this);
    }

    byte[] bytes(byte[] content) {
        if (content.length == 0) {
            return Hostile.word(random).getBytes(StandardCharsets.UTF_8);
        }
        int at = random.nextInt(content.length);
        int end = Math.min(content.length, at + 1 + random.nextInt(random.nextInt(4) == 0 ? 400 : 12));
        return switch (random.nextInt(8)) {
            case 0 -> Arrays.copyOf(content, at);
            case 1 -> joined(content, at, Hostile.word(random).getBytes(StandardCharsets.UTF_8), at);
            case 2 -> joined(content, at, Hostile.word(random).getBytes(StandardCharsets.UTF_8), end);
            case 3 -> joined(content, at, new byte[0], end);
            case 4 -> joined(content, end, Arrays.copyOfRange(content, at, end), end);
            case 5 -> joined(content, at, Arrays.copyOfRange(content, at, end), random.nextInt(content.length));
            case 6 -> joined(content, at, new byte[] {(byte) random.nextInt(256)}, at);
            default -> flipped(content, at);
        };
    }

    private byte[] flipped(byte[] content, int at) {
        var flipped = content.clone();
        flipped[at] = (byte) (random.nextBoolean() ? random.nextInt(256) : flipped[at] ^ 1 << random.nextInt(8));
        return flipped;
    }

    private static byte[] joined(byte[] content, int at, byte[] between, int from) {
        var joined = new byte[at + between.length + content.length - from];
        System.arraycopy(content, 0, joined, 0, at);
        System.arraycopy(between, 0, joined, at, between.length);
        System.arraycopy(content, from, joined, at + between.length, content.length - from);
        return joined;
    }

    private byte[] cells(byte[] content) {
        var rows = new ArrayList<>(List.of(new String(content, StandardCharsets.UTF_8).split("\n", -1)));
        int at = random.nextInt(rows.size());
        switch (random.nextInt(6)) {
            case 0 -> rows.remove(at);
            case 1 -> rows.add(random.nextInt(rows.size()), rows.get(at));
            case 2 -> rows.replaceAll(row -> changed(row, 2));
            default -> rows.set(at, changed(rows.get(at), random.nextInt(8)));
        }
        return String.join("\n", rows).getBytes(StandardCharsets.UTF_8);
    }

    private String changed(String row, int how) {
        var cells = new ArrayList<>(List.of(row.split(",", -1)));
        int at = random.nextInt(cells.size());
        switch (how) {
            case 0 -> cells.remove(at);
            case 1 -> cells.add(at, Hostile.word(random));
            case 2 -> cells.add(cells.remove(Math.min(1, cells.size() - 1)));
            case 3 -> cells.set(at, "\"" + cells.get(at));
            default -> cells.set(at, Hostile.value(random, cells.get(at)));
        }
        return String.join(random.nextInt(20) == 0 ? ";" : ",", cells);
    }
}
