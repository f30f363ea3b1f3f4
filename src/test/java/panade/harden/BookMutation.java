package panade.harden;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Damage inside the parts of a workbook, which its archive's checksums do not notice. */
final class BookMutation {
    private static final Pattern TEXT = Pattern.compile(">([^<]{1,60})<");
    private static final Pattern ATTRIBUTE = Pattern.compile("=\"([^\"]{1,60})\"");

    private final Random random;

    BookMutation(Random random) {
        this.random = random;
    }

    /** The damaged archive; as it was where it is none any more. */
    byte[] damaged(byte[] content) {
        try {
            var parts = unpacked(content);
            if (parts.isEmpty()) {
                return new Mutation(random).bytes(content);
            }
            var names = parts.keySet().toArray(String[]::new);
            var name = names[random.nextInt(names.length)];
            parts.put(name, part(parts.getOrDefault(name, new byte[0])));
            return packed(parts);
        } catch (IOException | IllegalArgumentException e) {
            return new Mutation(random).bytes(content);
        }
    }

    private byte[] part(byte[] part) {
        return switch (random.nextInt(4)) {
            case 0 -> new Mutation(random).bytes(part);
            case 1 -> replaced(part, ATTRIBUTE);
            default -> replaced(part, TEXT);
        };
    }

    /** Another word in one of the places that a pattern finds. */
    private byte[] replaced(byte[] part, Pattern pattern) {
        var text = new String(part, StandardCharsets.UTF_8);
        long places = pattern.matcher(text).results().count();
        if (places == 0) {
            return new Mutation(random).bytes(part);
        }
        var place = pattern.matcher(text)
                .results()
                .skip(random.nextInt((int) places))
                .findFirst()
                .orElseThrow();
        var word = Hostile.value(random, place.group(1))
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace("\"", "&quot;");
        var changed = text.substring(0, place.start(1)) + word + text.substring(place.end(1));
        return changed.getBytes(StandardCharsets.UTF_8);
    }

    private static Map<String, byte[]> unpacked(byte[] content) throws IOException {
        var parts = new LinkedHashMap<String, byte[]>();
        try (var zip = new ZipInputStream(new ByteArrayInputStream(content))) {
            for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), zip.readAllBytes());
            }
        }
        return parts;
    }

    static byte[] packed(Map<String, byte[]> parts) throws IOException {
        var bytes = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(bytes)) {
            for (var part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
            }
        }
        return bytes.toByteArray();
    }
}
