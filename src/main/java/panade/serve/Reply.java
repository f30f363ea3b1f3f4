package panade.serve;

import java.util.Map;

/**
 * What goes back to the browser.
 *
 * @param status of HTTP (RFC 9110)
 * @param body sent as UTF-8
 * @param headers beside those that every reply has
 */
public record Reply(int status, String type, String body, Map<String, String> headers) {
    static final int OK = 200;
    static final int SEE_OTHER = 303;
    static final int BAD_REQUEST = 400;
    static final int FORBIDDEN = 403;
    static final int NOT_FOUND = 404;
    static final int METHOD_NOT_ALLOWED = 405;
    static final int CONFLICT = 409;
    static final int PRECONDITION = 412;
    static final int TOO_LARGE = 413;
    static final int UNSUPPORTED_TYPE = 415;
    static final int MISDIRECTED = 421;
    static final int UNPROCESSABLE = 422;
    static final int TOO_MANY = 429;
    static final int FAULT = 500;

    public Reply {
        headers = Map.copyOf(headers);
    }

    /** A text of a type that is sent as UTF-8. */
    public static Reply of(String type, String text) {
        return new Reply(OK, type + "; charset=utf-8", text, Map.of());
    }

    /** A page. */
    public static Reply html(String page) {
        return of("text/html", page);
    }

    /** A sentence. */
    public static Reply said(String words) {
        return of("text/plain", words);
    }

    /** What was asked for was not done, and why. */
    public static Reply refused(String why) {
        return refusal(UNPROCESSABLE, why);
    }

    /** What was asked for would be done only if it was asked for again. */
    public static Reply doubted(String why) {
        return refusal(PRECONDITION, why);
    }

    /** Nothing is there. */
    public static Reply notFound() {
        return refusal(NOT_FOUND, "There is nothing here.");
    }

    /** The question was about something that is not there any more. */
    public static Reply outdated(String why) {
        return refusal(CONFLICT, why);
    }

    static Reply refusal(int status, String why) {
        return new Reply(status, "text/plain; charset=utf-8", why + "\n", Map.of());
    }

    static Reply seeOther(String path) {
        return new Reply(SEE_OTHER, "text/plain; charset=utf-8", "", Map.of("Location", path));
    }
}
