package panade.solver.ortools;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

class PlatformTest {
    private static final Path HOME = Path.of("home").toAbsolutePath();

    @Test
    void keeps_the_cache_where_each_system_wants_it() throws IOException {
        assertThat(on("Linux", Map.of()).cache()).isEqualTo(HOME.resolve(".cache/panade"));
        assertThat(on("Mac OS X", Map.of()).cache()).isEqualTo(HOME.resolve("Library/Caches/panade"));
        assertThat(on("Windows 11", Map.of("LOCALAPPDATA", "local")).cache()).isEqualTo(Path.of("local/panade"));
    }

    @Test
    void follows_xdg_only_when_it_gives_an_absolute_path() throws IOException {
        var absolute = Path.of("xdg").toAbsolutePath();
        assertThat(on("Linux", Map.of("XDG_CACHE_HOME", absolute.toString())).cache())
                .isEqualTo(absolute.resolve("panade"));
        assertThat(on("Linux", Map.of("XDG_CACHE_HOME", "xdg")).cache()).isEqualTo(HOME.resolve(".cache/panade"));
    }

    @Test
    void puts_the_users_choice_above_the_systems() throws IOException {
        var chosen = new Platform(Map.of("panade.cache", "mine", "os.name", "Linux"), Map.of());
        assertThat(chosen.cache()).isEqualTo(Path.of("mine"));
    }

    @Test
    void keepsNothingWhereTheUserHasNoHome() {
        var homeless = new Platform(Map.of("user.home", "?", "os.name", "Linux"), Map.of());
        assertThatThrownBy(homeless::cache).hasMessageContaining("no home folder");
    }

    @Test
    void names_platforms_as_the_resource_folders_do() {
        assertThat(on("Linux", Map.of()).platform()).isEqualTo("linux-x86-64");
        assertThat(on("Mac OS X", Map.of()).platform()).isEqualTo("darwin-x86-64");
        assertThat(on("Windows 11", Map.of()).platform()).isEqualTo("win32-x86-64");
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void loads_the_native_libraries_here() {
        assertThat(NativeLibraries.fault()).isEmpty();
    }

    private static Platform on(String system, Map<String, String> variables) {
        return new Platform(Map.of("os.name", system, "os.arch", "amd64", "user.home", HOME.toString()), variables);
    }

    @Test
    void whyTheLibrariesAreNotThereIsToldWithoutNamesOfClasses() {
        assertThat(NativeLibraries.words(new FileSystemException("/nowhere/cache", null, "Not a directory")))
                .isEqualTo("the folder or file /nowhere/cache cannot be used: Not a directory");
        assertThat(NativeLibraries.words(new IllegalStateException("Main$1 failed")))
                .isEqualTo("they do not start on this system");
        assertThat(NativeLibraries.words(new UnsatisfiedLinkError("'long com.google.ortools.mainJNI.create()'")))
                .isEqualTo("they do not start on this system");
    }
}
