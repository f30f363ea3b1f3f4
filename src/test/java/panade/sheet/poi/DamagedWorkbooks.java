package panade.sheet.poi;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Reads a workbook over and over, each time with other damage; run as a process of its own by GridReaderTest. */
public final class DamagedWorkbooks {
    private DamagedWorkbooks() {}

    /** Arguments: the workbook, where to put its damaged copies, and how many. Prints how many could still be read. */
    public static void main(String[] arguments) throws IOException {
        var whole = Files.readAllBytes(Path.of(arguments[0]));
        var copy = Path.of(arguments[1]);
        int readable = 0;
        for (int seed = 0; seed < Integer.parseInt(arguments[2]); seed++) {
            var random = new Random(seed);
            Files.write(copy, seed % 2 == 0 ? damaged(whole, random) : damagedPart(arguments[0], random));
            try {
                new PoiSpreadsheets().read(copy);
                readable++;
            } catch (IOException expected) {
                // it says that it cannot be read, as it should
            }
        }
        System.out.println(readable + " readable");
    }

    private static byte[] damaged(byte[] whole, Random random) {
        int length = random.nextInt(4) == 0 ? random.nextInt(whole.length) : whole.length;
        var bytes = Arrays.copyOf(whole, length);
        for (int i = random.nextInt(40); i > 0 && length > 0; i--) {
            bytes[random.nextInt(length)] = (byte) random.nextInt(256);
        }
        return bytes;
    }

    /** The same archive with damage inside one of its parts, which its checksums do not notice. */
    private static byte[] damagedPart(String whole, Random random) throws IOException {
        var copy = new ByteArrayOutputStream();
        try (var from = new ZipFile(whole);
                var to = new ZipOutputStream(copy)) {
            for (var entry : Collections.list(from.entries())) {
                to.putNextEntry(new ZipEntry(entry.getName()));
                var part = from.getInputStream(entry).readAllBytes();
                to.write(random.nextInt(4) == 0 ? damaged(part, random) : part);
            }
        }
        return copy.toByteArray();
    }
}
