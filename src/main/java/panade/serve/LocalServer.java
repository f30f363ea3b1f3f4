package panade.serve;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Consumer;

/**
 * The HTTP server of the Java runtime on the loopback address, at a free port. Nothing more is needed for one page and
 * one reader, so no library is taken for it.
 */
public final class LocalServer implements AutoCloseable {
    /** Seconds that a request may take to arrive, and its answer to be fetched. */
    private static final String SLOWEST = "10";

    private static final int THREADS = 48;
    private static final int BACKLOG = 64;

    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; "
            + "base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    static {
        limit("sun.net.httpserver.maxReqTime", SLOWEST);
        limit("sun.net.httpserver.maxRspTime", SLOWEST);
        limit("sun.net.httpserver.maxReqHeaders", "60");
    }

    private final HttpServer server;
    private final ExecutorService threads;
    private final Keys keys = new Keys(new SecureRandom());
    private final Gate gate;
    private final Duration idle;
    private final Consumer<RuntimeException> faults;
    private final AtomicLong lastUsed = new AtomicLong(System.nanoTime());

    /**
     * A server that is ready for requests.
     *
     * @param idle how long it waits for the next request before {@link #await} returns
     * @param faults told of what goes wrong within {@code pages}; the browser is told no more than that something did
     * @throws IOException where no port can be had
     */
    public LocalServer(Pages pages, Duration idle, Consumer<RuntimeException> faults) throws IOException {
        this.idle = idle;
        this.faults = faults;
        this.server = HttpServer.create(
                new InetSocketAddress(InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), 0), BACKLOG);
        this.gate = new Gate(host(), keys, pages, () -> lastUsed.set(System.nanoTime()));
        this.threads =
                new ThreadPoolExecutor(THREADS, THREADS, 1, TimeUnit.MINUTES, new LinkedBlockingQueue<>(), task -> {
                    var thread = new Thread(task, "page");
                    thread.setDaemon(true);
                    return thread;
                });
        server.setExecutor(threads);
        server.createContext("/", this::handle);
        server.start();
    }

    /** Keeps what whoever runs the program set. */
    private static void limit(String property, String value) {
        if (System.getProperty(property) == null) {
            System.setProperty(property, value);
        }
    }

    private String host() {
        return "127.0.0.1:" + server.getAddress().getPort();
    }

    /** The address with the key. */
    public URI address() {
        return URI.create("http://" + host() + "/" + keys.key() + "/");
    }

    /** An address that leads there, once. */
    public URI ticket() {
        return URI.create("http://" + host() + "/start/" + keys.ticket());
    }

    /** Waits until nobody has used the page for so long, or the thread is interrupted. */
    public void await() {
        while (!Thread.currentThread().isInterrupted()) {
            long left = idle.toNanos() - (System.nanoTime() - lastUsed.get());
            if (left <= 0) {
                return;
            }
            LockSupport.parkNanos(left);
        }
    }

    private void handle(HttpExchange exchange) throws IOException {
        try (exchange) {
            send(exchange, reply(exchange));
        }
    }

    private Reply reply(HttpExchange exchange) throws IOException {
        try {
            return gate.reply(exchange);
        } catch (RuntimeException fault) {
            faults.accept(fault);
            return Reply.refusal(Reply.FAULT, "This is a fault of the program. The terminal says more.");
        }
    }

    private static void send(HttpExchange exchange, Reply reply) throws IOException {
        var headers = exchange.getResponseHeaders();
        headers.set("Content-Type", reply.type());
        headers.set("Content-Security-Policy", POLICY);
        headers.set("Cache-Control", "no-store");
        headers.set("Referrer-Policy", "no-referrer");
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("Cross-Origin-Opener-Policy", "same-origin");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        reply.headers().forEach(headers::set);
        var body = reply.body().getBytes(StandardCharsets.UTF_8);
        exchange.sendResponseHeaders(reply.status(), body.length == 0 ? -1 : body.length);
        if (body.length > 0) {
            exchange.getResponseBody().write(body);
        }
    }

    @Override
    public void close() {
        server.stop(0);
        threads.shutdownNow();
    }
}
