package panade.cli.open;

import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.net.URI;
import java.util.List;
import java.util.Locale;

/** Starts the browser that whoever sits at this machine uses. */
final class Browsers {
    private Browsers() {}

    /** Whether one could be started; that it shows the page is more than can be known. */
    static boolean open(URI address) {
        var system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.contains("win")) {
            return start(List.of("rundll32", "url.dll,FileProtocolHandler", address.toString()));
        }
        if (system.contains("mac")) {
            return start(List.of("open", address.toString()));
        }
        boolean screen = System.getenv("DISPLAY") != null || System.getenv("WAYLAND_DISPLAY") != null;
        return screen && start(List.of("xdg-open", address.toString()));
    }

    private static boolean start(List<String> command) {
        try {
            new ProcessBuilder(command)
                    .redirectOutput(Redirect.DISCARD)
                    .redirectError(Redirect.DISCARD)
                    .start();
            return true;
        } catch (IOException none) {
            return false;
        }
    }
}
