package panade.page;

import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import panade.testing.TemporaryFolders;

/**
 * A real browser without a window. Where there is none its tests are passed over with a message, unless the environment
 * says {@code PANADE_BROWSER=required}.
 */
final class Browser implements AutoCloseable {
    private static final List<String> BROWSERS =
            List.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome");
    private static final List<String> DRIVERS = List.of("/usr/bin/chromedriver", "/usr/local/bin/chromedriver");
    /** A PNG of one dot. */
    private static final String DOT =
            "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5E" + "rkJggg==";

    private static final String AXE = read("/axe.min.js");

    private final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    static Browser open() {
        var browser = first(BROWSERS);
        var driver = first(DRIVERS);
        if (browser.isEmpty() || driver.isEmpty()) {
            var message = "The page is not tested in a browser: expected Chromium and its driver, at one of " + BROWSERS
                    + " and " + DRIVERS + ". On Debian: apt-get install chromium chromium-driver.";
            if ("required".equals(System.getenv("PANADE_BROWSER"))) {
                fail(message);
            }
            assumeTrue(false, message);
        }
        return new Browser(start(browser, driver));
    }

    private static ChromeDriver start(String browser, String driver) {
        System.setProperty("SE_OFFLINE", "true");
        System.setProperty("SE_AVOID_STATS", "true");
        var logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        var options = new ChromeOptions().setBinary(browser);
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--disable-dev-shm-usage",
                "--user-data-dir=" + TemporaryFolders.create("panade-browser"));
        options.setCapability("goog:loggingPrefs", logs);
        var service = new ChromeDriverService.Builder()
                .usingDriverExecutable(Path.of(driver).toFile())
                .build();
        return new ChromeDriver(service, options);
    }

    private static String first(List<String> places) {
        return places.stream()
                .filter(place -> Files.isExecutable(Path.of(place)))
                .findFirst()
                .orElse("");
    }

    /** Opens a page from disk at a size, in the light or the dark. */
    void visit(Path page, View view) {
        visit(page.toUri(), view);
    }

    /** Opens an address likewise. */
    void visit(URI address, View view) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", view.width(), "height", 900, "deviceScaleFactor", 1, "mobile", view.width() < 600));
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", view.scheme()))));
        driver.get(address.toString());
    }

    /** The width of a screen, and whether it is light or dark. */
    record View(int width, String scheme) {
        static final View DESK = new View(1280, "light");

        static final List<View> ALL =
                List.of(DESK, new View(1280, "dark"), new View(390, "light"), new View(390, "dark"));
    }

    ChromeDriver driver() {
        return driver;
    }

    /** The text of every element that a selector finds, in order, as it stands in the document. */
    @SuppressWarnings("unchecked")
    List<String> texts(String selector) {
        return (List<String>) run(
                "return [...document.querySelectorAll(arguments[0])].map(e => e.textContent.replace(/\\s+/g, ' ').trim())",
                selector);
    }

    String text(String selector) {
        return texts(selector).get(0);
    }

    Object run(String script, Object... arguments) {
        var answer = driver.executeScript(script, arguments);
        return answer == null ? "" : answer;
    }

    /** What the console says since it was last asked. */
    List<String> console() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    /** The addresses that were asked for since this was last asked. */
    List<String> requests() {
        return driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
                .map(LogEntry::getMessage)
                .filter(message -> message.contains("\"Network.requestWillBeSent\""))
                .flatMap(message -> Stream.of(message.split("\"url\":\"", 2)).skip(1))
                .map(rest -> rest.substring(0, rest.indexOf('"')))
                .toList();
    }

    /** What axe-core finds wrong for people who cannot see the page or use no mouse: rule, element and reason. */
    @SuppressWarnings("unchecked")
    List<String> barriers() {
        driver.executeScript(AXE);
        var found = driver.executeAsyncScript("const done = arguments[arguments.length - 1];"
                + "axe.run().then(r => done(r.violations.flatMap(v => v.nodes.map(n => v.id + ' ' + n.target + ': '"
                + " + n.failureSummary))), e => done([String(e)]));");
        return (List<String>) Objects.requireNonNull(found);
    }

    /** Whether the page gets a picture from disk when one is put into it; the picture is written first. */
    boolean isFetched(Path picture) throws IOException {
        Files.write(picture, Base64.getDecoder().decode(DOT));
        return Boolean.TRUE.equals(driver.executeAsyncScript(
                "const done = arguments[1]; const i = new Image(); i.onload = () => done(true);"
                        + "i.onerror = () => done(false); i.src = arguments[0]; document.body.append(i);",
                picture.toUri().toString()));
    }

    /** The page as it is printed. */
    byte[] printed() {
        var answer =
                driver.executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true, "printBackground", true));
        return Base64.getDecoder().decode((String) answer.get("data"));
    }

    private static String read(String resource) {
        try (InputStream stream = Browser.class.getResourceAsStream(resource)) {
            return new String(Objects.requireNonNull(stream).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    @Override
    public void close() {
        driver.quit();
    }
}
