package panade.solver.ortools;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the process was told about its machine: the only reader of system properties and environment variables here.
 *
 * @param properties system properties by name
 * @param variables environment variables by name
 */
record Platform(Map<String, String> properties, Map<String, String> variables) {
    static Platform ofThisProcess() {
        var properties = new HashMap<String, String>();
        Stream.of("panade.cache", "os.name", "os.arch", "user.home")
                .forEach(name ->
                        Optional.ofNullable(System.getProperty(name)).ifPresent(value -> properties.put(name, value)));
        return new Platform(properties, System.getenv());
    }

    boolean isLinux() {
        return system().contains("linux");
    }

    /** The platform's name in OR-Tools' resource folders, such as {@code linux-x86-64}. */
    String platform() {
        var arch = properties.getOrDefault("os.arch", "").toLowerCase(Locale.ROOT);
        return osPrefix() + "-" + (arch.equals("amd64") || arch.equals("x86_64") ? "x86-64" : arch);
    }

    private String osPrefix() {
        return isLinux() ? "linux" : isMac() ? "darwin" : "win32";
    }

    /**
     * The user's own cache folder as each system wants it; the property {@code panade.cache} overrides it.
     *
     * @throws IOException when the user has no folder of any kind
     */
    Path cache() throws IOException {
        var chosen = filled(properties, "panade.cache").map(Path::of);
        return chosen.isPresent() ? chosen.get() : systemCache().resolve("panade");
    }

    private Path systemCache() throws IOException {
        if (isMac()) {
            return home().resolve("Library").resolve("Caches");
        }
        var named = isLinux() ? xdg() : filled(variables, "LOCALAPPDATA").map(Path::of);
        return named.isPresent() ? named.get() : home().resolve(isLinux() ? ".cache" : "AppData/Local");
    }

    /** Java calls a home that it cannot find out "?", which is no reason to make a folder of that name. */
    private Path home() throws IOException {
        return filled(properties, "user.home")
                .map(Path::of)
                .filter(Path::isAbsolute)
                .orElseThrow(() -> new IOException("there is no home folder to keep them in"));
    }

    /** The XDG Base Directory Specification has relative paths ignored. */
    private Optional<Path> xdg() {
        return filled(variables, "XDG_CACHE_HOME").map(Path::of).filter(Path::isAbsolute);
    }

    private boolean isMac() {
        return system().contains("mac");
    }

    private String system() {
        return properties.getOrDefault("os.name", "").toLowerCase(Locale.ROOT);
    }

    private static Optional<String> filled(Map<String, String> values, String name) {
        return Optional.ofNullable(values.get(name)).filter(value -> !value.isBlank());
    }
}
