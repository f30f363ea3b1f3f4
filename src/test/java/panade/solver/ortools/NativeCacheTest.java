package panade.solver.ortools;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class NativeCacheTest {
    private static final int RACERS = 8;

    @TempDir
    Path place;

    private Path home;

    @BeforeEach
    void choose_a_home() {
        home = place.resolve("home");
    }

    @Test
    void unpacks_only_what_lies_right_in_the_folder() throws IOException {
        assertThat(names(unpacked("content"))).containsExactly("liba.so", "libb.so");
    }

    @Test
    void uses_the_folder_again_the_second_time() throws IOException {
        var library = unpacked("content").resolve("liba.so");
        var first = Files.readAttributes(library, BasicFileAttributes.class);
        unpacked("content");
        var second = Files.readAttributes(library, BasicFileAttributes.class);
        assertThat(second.fileKey()).isEqualTo(first.fileKey());
        assertThat(second.lastModifiedTime()).isEqualTo(first.lastModifiedTime());
    }

    @Test
    void repairs_a_truncated_library() throws IOException {
        var library = unpacked("content").resolve("liba.so");
        Files.writeString(library, "c");
        unpacked("content");
        assertThat(library).hasContent("content");
        assertThat(names(home)).hasSize(1);
    }

    @Test
    void repairs_a_library_of_the_right_size_with_a_wrong_byte_in_it() throws IOException {
        var library = unpacked("content").resolve("liba.so");
        Files.writeString(library, "contens");
        unpacked("content");
        assertThat(library).hasContent("content");
        assertThat(names(home)).hasSize(1);
    }

    @Test
    void clears_away_what_an_unpacking_that_was_killed_left_behind() throws IOException {
        var folder = unpacked("content");
        var killed = Files.createDirectory(home.resolve("unpacking-123"));
        Files.writeString(killed.resolve("liba.so"), "cont");
        var probe = Files.createFile(home.resolve("unpacking-4.tmp"));
        var atWork = Files.createDirectory(home.resolve("unpacking-567"));
        var longAgo = FileTime.from(Instant.now().minus(Duration.ofHours(2)));
        Files.setLastModifiedTime(killed, longAgo);
        Files.setLastModifiedTime(probe, longAgo);
        assertThat(unpacked("content")).isEqualTo(folder);
        assertThat(names(home))
                .containsExactlyInAnyOrder(
                        folder.getFileName().toString(), atWork.getFileName().toString());
    }

    @Test
    void repairs_a_folder_with_a_library_missing() throws IOException {
        var library = unpacked("content").resolve("libb.so");
        Files.delete(library);
        unpacked("content");
        assertThat(library).exists();
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void replaces_a_folder_that_others_may_write_to() throws IOException {
        var folder = unpacked("content");
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxrwxrwx"));
        unpacked("content");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)))
                .isEqualTo("rwx------");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void replaces_a_link_to_a_folder_elsewhere() throws IOException {
        var folder = unpacked("content");
        var elsewhere = Files.move(folder, place.resolve("elsewhere"));
        Files.createSymbolicLink(folder, elsewhere);
        unpacked("content");
        assertThat(Files.isSymbolicLink(folder)).isFalse();
        assertThat(names(elsewhere)).hasSize(2);
    }

    @Test
    void gives_other_content_another_folder() throws IOException {
        assertThat(unpacked("content")).isNotEqualTo(unpacked("changed"));
    }

    @Test
    void leaves_nothing_behind_when_the_jar_is_damaged() throws IOException {
        var jar = jar("content");
        var bytes = Files.readAllBytes(jar);
        int content = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("content");
        bytes[content] ^= 1;
        Files.write(jar, bytes);
        assertThatThrownBy(() -> unpacked(jar)).isInstanceOf(IOException.class);
        assertThat(names(home)).isEmpty();
    }

    @Test
    void gives_racing_threads_one_folder() throws Exception {
        var jar = jar("content");
        assertThat(race(jar)).hasSize(RACERS).containsOnly(unpacked(jar));
        assertThat(names(home)).hasSize(1);
        assertThat(names(unpacked(jar))).containsExactly("liba.so", "libb.so");
    }

    private List<Path> race(Path jar) throws Exception {
        var start = new CyclicBarrier(RACERS);
        Callable<Path> racer = () -> {
            start.await();
            return unpacked(jar);
        };
        var pool = Executors.newFixedThreadPool(RACERS);
        try {
            var folders = new ArrayList<Path>();
            for (Future<Path> end : pool.invokeAll(Collections.nCopies(RACERS, racer))) {
                folders.add(end.get());
            }
            return folders;
        } finally {
            pool.shutdown();
        }
    }

    private Path unpacked(String content) throws IOException {
        return unpacked(jar(content));
    }

    private Path unpacked(Path jar) throws IOException {
        try (var archive = new LibraryArchive(jar, "natives")) {
            return new NativeCache(home).folder(archive, "test");
        }
    }

    /** Stored rather than deflated, so that a test can damage the content alone. */
    private Path jar(String content) throws IOException {
        var jar = place.resolve(content + ".jar");
        try (var out = new ZipOutputStream(Files.newOutputStream(jar))) {
            out.setLevel(0);
            for (var name : List.of("natives/", "natives/liba.so", "natives/libb.so", "natives/../out.so", "x.so")) {
                out.putNextEntry(new ZipEntry(name));
                out.write(name.endsWith("/") ? new byte[0] : content.getBytes(StandardCharsets.UTF_8));
                out.closeEntry();
            }
        }
        return jar;
    }

    private static List<String> names(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
