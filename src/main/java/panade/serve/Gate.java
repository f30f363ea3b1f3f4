package panade.serve;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;

/**
 * Lets nobody in but a page that this program served. A page from elsewhere may try this address as well as anybody: it
 * does not know the key, its name resolves to another host (DNS rebinding), and what it posts says where it comes from
 * (Fetch Standard, "Origin"; Fetch Metadata).
 */
final class Gate {
    static final int LARGEST_BODY = 256 * 1024;

    private static final int BURST = 60;
    private static final int PER_SECOND = 30;
    private static final String TICKETS = "start";

    private final String host;
    private final Keys keys;
    private final Pages pages;
    private final Runnable used;
    private final RateLimit rate = new RateLimit(BURST, PER_SECOND, System::nanoTime);

    /**
     * A gate.
     *
     * @param host with the port, as a browser names it
     * @param used told of each request with the right key
     */
    Gate(String host, Keys keys, Pages pages, Runnable used) {
        this.host = host;
        this.keys = keys;
        this.pages = pages;
        this.used = used;
    }

    Reply reply(HttpExchange exchange) throws IOException {
        if (!host.equals(exchange.getRequestHeaders().getFirst("Host"))) {
            return Reply.refusal(Reply.MISDIRECTED, "Expected the address as it was printed.");
        }
        var words = exchange.getRequestURI().getRawPath().split("/", 3);
        if (words.length < 3) {
            return Reply.notFound();
        }
        if (words[1].equals(TICKETS)) {
            return keys.spend(words[2]) ? Reply.seeOther("/" + keys.key() + "/") : Reply.notFound();
        }
        return keys.isKey(words[1]) ? known(exchange, words[2]) : Reply.notFound();
    }

    private Reply known(HttpExchange exchange, String path) throws IOException {
        if (isFromElsewhere(exchange)) {
            return Reply.refusal(Reply.FORBIDDEN, "Expected a request from the page itself.");
        }
        if (!rate.tryPass()) {
            return Reply.refusal(Reply.TOO_MANY, "Expected fewer requests a second.");
        }
        used.run();
        return switch (exchange.getRequestMethod()) {
            case "GET" -> pages.get(path);
            case "POST" -> posted(exchange, path);
            default -> Reply.refusal(Reply.METHOD_NOT_ALLOWED, "Expected GET or POST.");
        };
    }

    private boolean isFromElsewhere(HttpExchange exchange) {
        var headers = exchange.getRequestHeaders();
        var origin = headers.getFirst("Origin");
        var site = headers.getFirst("Sec-Fetch-Site");
        boolean post = exchange.getRequestMethod().equals("POST");
        boolean elsewhere = origin == null ? post : !origin.equals("http://" + host);
        return elsewhere || (site != null && !site.equals("same-origin") && !site.equals("none"));
    }

    private Reply posted(HttpExchange exchange, String path) throws IOException {
        var type = Optional.ofNullable(exchange.getRequestHeaders().getFirst("Content-Type"));
        if (type.filter(given -> given.startsWith(FormText.TYPE)).isEmpty()) {
            return Reply.refusal(Reply.UNSUPPORTED_TYPE, "Expected a form.");
        }
        if (length(exchange) > LARGEST_BODY) {
            return Reply.refusal(Reply.TOO_LARGE, "Expected a smaller form.");
        }
        var body = exchange.getRequestBody().readNBytes(LARGEST_BODY + 1);
        if (body.length > LARGEST_BODY) {
            return Reply.refusal(Reply.TOO_LARGE, "Expected a smaller form.");
        }
        var form = FormText.read(body);
        return form.map((Map<String, String> fields) -> pages.post(path, fields))
                .orElseGet(() -> Reply.refusal(Reply.BAD_REQUEST, "Expected a form."));
    }

    /** How long the body says it is; none where it does not say. */
    private static long length(HttpExchange exchange) {
        var stated = exchange.getRequestHeaders().getFirst("Content-Length");
        try {
            return stated == null ? 0 : Long.parseLong(stated);
        } catch (NumberFormatException unreadable) {
            return Long.MAX_VALUE;
        }
    }
}
