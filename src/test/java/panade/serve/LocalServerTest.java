package panade.serve;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.SocketException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Who is answered and who is not; requests are written byte by byte, as no client of good manners would. */
class LocalServerTest {
    private static final int PATIENCE = 60_000;
    private static final int MANY = 40;
    private static final String FORM = "Content-Type: application/x-www-form-urlencoded\r\n";

    static {
        // Read once by the runtime's server; another test may have been first.
        System.setProperty("sun.net.httpserver.maxReqTime", "2");
    }

    private final List<RuntimeException> faults = new CopyOnWriteArrayList<>();
    private LocalServer server;

    @BeforeEach
    void start() throws IOException {
        server = new LocalServer(new Echo(), Duration.ofHours(1), faults::add);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    /** Pages that say what was asked. */
    private static final class Echo implements Pages {
        @Override
        public Reply get(String path) {
            if (path.equals("broken")) {
                throw new IllegalStateException("secret");
            }
            return path.isEmpty() ? Reply.html("the page") : Reply.notFound();
        }

        @Override
        public Reply post(String path, Map<String, String> form) {
            return Reply.html(path + " " + form);
        }
    }

    private URI address() {
        return server.address();
    }

    private String host() {
        return address().getAuthority();
    }

    private String get(String path, String... headers) throws IOException {
        return sent("GET " + path + " HTTP/1.1\r\nHost: " + host() + "\r\n" + String.join("\r\n", headers)
                + (headers.length == 0 ? "" : "\r\n") + "Connection: close\r\n\r\n");
    }

    private String post(String body, String... headers) throws IOException {
        return sent("POST " + address().getPath() + "answer HTTP/1.1\r\nHost: " + host() + "\r\n" + FORM
                + String.join("\r\n", headers) + "\r\nContent-Length: " + body.length()
                + "\r\nConnection: close\r\n\r\n" + body);
    }

    private String own() {
        return "Origin: http://" + host();
    }

    private String sent(String request) throws IOException {
        try (var socket = connection()) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private Socket connection() throws IOException {
        var socket = new Socket(InetAddress.getLoopbackAddress(), address().getPort());
        socket.setSoTimeout(PATIENCE);
        return socket;
    }

    private static String status(String reply) {
        return reply.split(" ", 3)[1];
    }

    @Test
    void the_page_is_at_the_address_with_nothing_that_a_browser_could_leak_or_keep() throws IOException {
        assertThat(get(address().getPath()))
                .startsWith("HTTP/1.1 200 ")
                .endsWith("\r\n\r\nthe page")
                .containsIgnoringCase("Cache-Control: no-store\r\n")
                .containsIgnoringCase("Referrer-Policy: no-referrer\r\n")
                .containsIgnoringCase("X-Content-Type-Options: nosniff\r\n")
                .containsIgnoringCase(
                        "Content-Security-Policy: default-src 'none'; script-src 'self'; style-src 'self';"
                                + " connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'\r\n");
    }

    @Test
    void a_form_from_the_page_is_answered() throws IOException {
        assertThat(post("b3.min=18+%25&p=%C3%A9", own())).endsWith("\r\n\r\nanswer {b3.min=18 %, p=\u00e9}");
        assertThat(status(post("b3.min=18+%2", own()))).isEqualTo("400");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "", "/answer", "/wrong/", "/start/", "/start/wrong", "/%2e%2e/", "/wrong/open.js"})
    void without_the_key_there_is_nothing(String path) throws IOException {
        assertThat(status(get(path.isEmpty() ? "/" : path))).isEqualTo("404");
    }

    @Test
    void a_key_is_new_each_time_and_too_long_to_guess() throws IOException {
        try (var other = new LocalServer(new Echo(), Duration.ofHours(1), faults::add)) {
            assertThat(other.address().getPath()).isNotEqualTo(address().getPath());
        }
        assertThat(address().getPath()).matches("/[A-Za-z0-9_-]{32}/"); // 24 bytes: 192 bits
    }

    @Test
    void a_ticket_leads_to_the_page_once() throws IOException {
        var ticket = server.ticket().getPath();
        assertThat(get(ticket))
                .startsWith("HTTP/1.1 303 ")
                .contains("ocation: " + address().getPath() + "\r\n");
        assertThat(status(get(ticket))).isEqualTo("404");
        assertThat(status(get("/start/"))).isEqualTo("404");
    }

    @ParameterizedTest
    @ValueSource(strings = {"evil.example", "localhost", "127.0.0.1", "127.0.0.1:1", "[::1]"})
    void under_another_name_nobody_is_answered(String name) throws IOException {
        assertThat(status(sent(
                        "GET " + address().getPath() + " HTTP/1.1\r\nHost: " + name + "\r\nConnection: close\r\n\r\n")))
                .isEqualTo("421");
    }

    @ParameterizedTest
    @CsvSource({
        "Origin: http://evil.example, 403",
        "Origin: null, 403",
        "Origin: https://127.0.0.1, 403",
        "X-Nothing: no origin at all, 403"
    })
    void what_another_page_posts_is_refused(String origin, String status) throws IOException {
        assertThat(status(post("b=1", origin))).isEqualTo(status);
    }

    @Test
    void what_another_site_asks_for_is_refused() throws IOException {
        assertThat(status(post("b=1", own(), "Sec-Fetch-Site: cross-site"))).isEqualTo("403");
        assertThat(status(get(address().getPath(), "Sec-Fetch-Site: same-site")))
                .isEqualTo("403");
        assertThat(status(get(address().getPath(), "Origin: http://evil.example")))
                .isEqualTo("403");
        assertThat(status(get(address().getPath(), "Sec-Fetch-Site: none"))).isEqualTo("200");
    }

    @Test
    void a_giant_form_is_refused_whether_it_says_so_or_not() throws IOException {
        var head =
                "POST " + address().getPath() + "answer HTTP/1.1\r\nHost: " + host() + "\r\n" + FORM + own() + "\r\n";
        assertThat(status(firstLine(head + "Content-Length: 9999999999\r\n\r\n")))
                .isEqualTo("413");
        assertThat(status(firstLine(head + "Content-Length: 99999999999999999999\r\n\r\n")))
                .isIn("400", "413", "500");
        var chunk = "a".repeat(0x8000);
        var chunks = ("8000\r\n" + chunk + "\r\n").repeat(Gate.LARGEST_BODY / chunk.length() + 1);
        assertThat(status(firstLine(head + "Transfer-Encoding: chunked\r\n\r\n" + chunks)))
                .isEqualTo("413");
        assertThat(status(post("a=" + "b".repeat(Gate.LARGEST_BODY - 2), own())))
                .isEqualTo("200");
    }

    /** The start of an answer that may be cut off behind it, since nobody reads what is still sent. */
    private String firstLine(String request) throws IOException {
        try (var socket = connection()) {
            try {
                socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            } catch (SocketException refused) {
                // It was told before all was sent.
            }
            return new String(socket.getInputStream().readNBytes(20), StandardCharsets.US_ASCII);
        }
    }

    @Test
    void other_types_and_methods_are_refused() throws IOException {
        var line = " " + address().getPath() + "answer HTTP/1.1\r\nHost: " + host() + "\r\n" + own() + "\r\n";
        var end = "Content-Length: 0\r\nConnection: close\r\n\r\n";
        assertThat(status(sent("POST" + line + "Content-Type: text/plain\r\n" + end)))
                .isEqualTo("415");
        assertThat(status(sent("POST" + line + end))).isEqualTo("415");
        assertThat(status(sent("DELETE" + line + end))).isEqualTo("405");
        assertThat(status(sent("OPTIONS" + line + end))).isEqualTo("405");
    }

    @Test
    void slow_clients_keep_nobody_waiting_and_are_cut_off() throws IOException {
        var slow = new ArrayList<Socket>();
        try {
            for (int i = 0; i < MANY; i++) {
                var socket = connection();
                slow.add(socket);
                var start = i % 2 == 0
                        ? "GET " + address().getPath() + " HTTP/1.1\r\nHo"
                        : "POST " + address().getPath() + "answer HTTP/1.1\r\nHost: " + host() + "\r\n" + FORM + own()
                                + "\r\nContent-Length: 100\r\n\r\na=";
                socket.getOutputStream().write(start.getBytes(StandardCharsets.US_ASCII));
            }
            assertThat(status(get(address().getPath()))).isEqualTo("200");
            for (var socket : slow) {
                assertThat(ended(socket.getInputStream())).isTrue();
            }
            assertThat(status(get(address().getPath()))).isEqualTo("200");
        } finally {
            for (var socket : slow) {
                socket.close();
            }
        }
    }

    /** Whether nothing comes any more; the clock of the socket fails the test where that takes too long. */
    private static boolean ended(InputStream in) throws IOException {
        try {
            in.readAllBytes();
            return true;
        } catch (SocketException reset) {
            return true;
        }
    }

    @Test
    void too_many_requests_are_refused_and_later_ones_are_not() throws IOException {
        var seen = new ArrayList<String>();
        for (int i = 0; i < 400 && !seen.contains("429"); i++) {
            seen.add(status(get(address().getPath())));
        }
        assertThat(seen).contains("200", "429");
        assertThat(Stream.generate(() -> {
                            try {
                                return status(get(address().getPath()));
                            } catch (IOException e) {
                                throw new IllegalStateException(e);
                            }
                        })
                        .limit(10_000)
                        .anyMatch("200"::equals))
                .isTrue();
    }

    @Test
    void a_rate_is_a_burst_and_then_so_many_a_second() {
        var now = new long[] {Long.MAX_VALUE - 500_000_000L}; // the clock may pass its largest number
        var rate = new RateLimit(3, 2, () -> now[0]);
        assertThat(Stream.generate(rate::tryPass).limit(5)).containsExactly(true, true, true, false, false);
        now[0] += 500_000_000L;
        assertThat(Stream.generate(rate::tryPass).limit(2)).containsExactly(true, false);
        now[0] += 60_000_000_000L;
        assertThat(Stream.generate(rate::tryPass).limit(4)).containsExactly(true, true, true, false);
    }

    @Test
    void a_fault_within_is_told_to_the_program_and_not_to_the_browser() throws IOException {
        assertThat(get(address().getPath() + "broken"))
                .startsWith("HTTP/1.1 500 ")
                .doesNotContain("secret");
        assertThat(faults).singleElement().satisfies(fault -> assertThat(fault).hasMessage("secret"));
    }

    @Test
    void nobody_but_this_machine_reaches_it() throws IOException {
        var others = NetworkInterface.networkInterfaces()
                .flatMap(NetworkInterface::inetAddresses)
                .filter(each -> !each.equals(address(address())))
                .toList();
        for (var other : others) {
            assertThat(reaches(other)).as(other.toString()).isFalse();
        }
    }

    private static InetAddress address(URI uri) {
        try {
            return InetAddress.getByName(uri.getHost());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private boolean reaches(InetAddress other) {
        try (var socket = new Socket(other, address().getPort())) {
            return socket.isConnected();
        } catch (IOException refused) {
            return false;
        }
    }

    @Test
    void it_ends_when_nobody_uses_it() throws IOException {
        try (var brief = new LocalServer(new Echo(), Duration.ofMillis(50), faults::add)) {
            brief.await();
        }
        Thread.currentThread().interrupt();
        server.await();
        assertThat(Thread.interrupted()).isTrue();
    }
}
