package panade.export;

/**
 * Words for a CSV file that may be opened with a spreadsheet. What begins with a sign that makes a formula gets an
 * apostrophe before it, which spreadsheets show as text (OWASP, CSV Injection).
 */
final class GuardedText {
    private static final String SIGNS = "=+-@\t\r";

    private GuardedText() {}

    static String of(String text) {
        return !text.isEmpty() && SIGNS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
