package panade.solver.ortools;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPSolver;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Properties;

/** Loads the native libraries once per process: from the per-user cache where that works, else by OR-Tools' loader. */
final class NativeLibraries {
    private static final String ENTRY = "libjniortools.so";
    private static final String VERSION = "/META-INF/maven/com.google.ortools/ortools-java/pom.properties";
    private static final Optional<String> FAULT = load(Platform.ofThisProcess());

    private NativeLibraries() {}

    /** Why the native libraries are not there; empty when they are. */
    static Optional<String> fault() {
        return FAULT;
    }

    private static Optional<String> load(Platform surroundings) {
        var uncached = fromCache(surroundings);
        try {
            if (uncached.isPresent()) {
                Loader.loadNativeLibraries();
            }
            tryOut();
            return Optional.empty();
        } catch (LinkageError | RuntimeException e) {
            return Optional.of("the native libraries could not be loaded (" + uncached.orElse(words(e)) + ")");
        }
    }

    /** The library's own loader may fail without a word; what is not there shows with the first call. */
    private static void tryOut() {
        var solver = MPSolver.createSolver("GLOP");
        if (solver != null) {
            solver.delete();
        }
    }

    /**
     * Loads them from the cache, or tells why not. On Linux the libraries find each other in their folder; elsewhere
     * that is not known to hold.
     */
    private static Optional<String> fromCache(Platform surroundings) {
        if (!surroundings.isLinux()) {
            return Optional.of("there is no cache on this system");
        }
        try {
            System.load(unpacked(surroundings).resolve(ENTRY).toString());
            return Optional.empty();
        } catch (IOException | LinkageError | RuntimeException e) {
            // Whatever is wrong with the cache, the library's own loader may still manage.
            return Optional.of(words(e));
        }
    }

    /** What went wrong, without the names of the program's own parts. */
    static String words(Throwable fault) {
        if (fault instanceof FileSystemException file) {
            var reason = file.getReason();
            return "the folder or file " + file.getFile() + " cannot be used" + (reason == null ? "" : ": " + reason);
        }
        var message = fault instanceof IOException || fault instanceof UnsatisfiedLinkError ? fault.getMessage() : null;
        return message == null || message.contains("com.google") ? "they do not start on this system" : message;
    }

    /** The folder the libraries lie in, filled if need be. */
    static Path unpacked(Platform surroundings) throws IOException {
        var packed = "ortools-" + surroundings.platform();
        var resource = NativeLibraries.class.getResource("/" + packed + "/" + ENTRY);
        if (resource == null) {
            throw new IOException("there are no native libraries for " + surroundings.platform());
        }
        try (var archive = LibraryArchive.around(resource, packed)) {
            var label = "ortools-" + version() + "-" + surroundings.platform();
            return new NativeCache(surroundings.cache()).folder(archive, label);
        }
    }

    private static String version() throws IOException {
        try (InputStream text = NativeLibraries.class.getResourceAsStream(VERSION)) {
            var properties = new Properties();
            if (text != null) {
                properties.load(text);
            }
            return properties.getProperty("version", "unknown").replaceAll("[^0-9A-Za-z.]", "_");
        }
    }
}
