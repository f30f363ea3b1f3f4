package panade.solver.ortools;

import java.io.Closeable;
import java.io.IOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.CheckedInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** The native libraries packed in one folder of a jar. */
final class LibraryArchive implements Closeable {
    private static final int KEY_LENGTH = 16;

    private final ZipFile jar;
    private final String folder;
    private final List<? extends ZipEntry> entries;

    LibraryArchive(Path jar, String folder) throws IOException {
        this.jar = new ZipFile(jar.toFile());
        this.folder = folder + "/";
        this.entries = this.jar.stream()
                .filter(this::isLibrary)
                .sorted(Comparator.comparing(ZipEntry::getName))
                .toList();
    }

    /** The archive around a resource; fails for one that is not in a plain jar file. */
    static LibraryArchive around(URL resource, String folder) throws IOException {
        if (!(resource.openConnection() instanceof JarURLConnection connection)) {
            throw new IOException("not in a jar: " + resource);
        }
        try {
            return new LibraryArchive(Path.of(connection.getJarFileURL().toURI()), folder);
        } catch (URISyntaxException | IllegalArgumentException e) {
            throw new IOException("not in a jar file: " + resource, e);
        }
    }

    /** Only files right in the folder, so that no name can lead out of the place they are unpacked to. */
    private boolean isLibrary(ZipEntry entry) {
        var name = entry.getName();
        return name.startsWith(folder)
                && name.length() > folder.length()
                && name.indexOf('/', folder.length()) < 0
                && name.indexOf('\\') < 0;
    }

    /** A checksum over every name, size and CRC-32: another build of the libraries gets another folder. */
    String checksum() throws IOException {
        try {
            var digest = MessageDigest.getInstance("SHA-256");
            for (var entry : entries) {
                var line = fileName(entry) + " " + entry.getSize() + " " + entry.getCrc() + "\n";
                digest.update(line.getBytes(StandardCharsets.UTF_8));
            }
            return HexFormat.of().formatHex(digest.digest()).substring(0, KEY_LENGTH);
        } catch (NoSuchAlgorithmException e) {
            throw new IOException("this Java has no SHA-256", e);
        }
    }

    List<Library> libraries() {
        return entries.stream()
                .map(entry -> new Library(fileName(entry), entry.getSize(), entry.getCrc()))
                .toList();
    }

    /** Unpacks all libraries, each checked while it is written. */
    void unpackInto(Path target) throws IOException {
        for (var entry : entries) {
            try (var content = new CheckedInputStream(jar.getInputStream(entry), new CRC32())) {
                long size = Files.copy(content, target.resolve(fileName(entry)));
                if (size != entry.getSize() || content.getChecksum().getValue() != entry.getCrc()) {
                    throw new IOException("a native library is damaged: " + entry.getName());
                }
            }
        }
    }

    private String fileName(ZipEntry entry) {
        return entry.getName().substring(folder.length());
    }

    @Override
    public void close() throws IOException {
        jar.close();
    }

    /**
     * One library.
     *
     * @param size when unpacked
     * @param checksum CRC-32 of what is unpacked
     */
    record Library(String fileName, long size, long checksum) {
        private static final int CHUNK = 1 << 20;

        /** Whether a file holds it, to the last byte. */
        boolean isAt(Path file) throws IOException {
            if (Files.size(file) != size) {
                return false;
            }
            var crc = new CRC32();
            var chunk = new byte[CHUNK];
            try (var content = Files.newInputStream(file)) {
                for (int read = content.read(chunk); read >= 0; read = content.read(chunk)) {
                    crc.update(chunk, 0, read);
                }
            }
            return crc.getValue() == checksum;
        }
    }
}
