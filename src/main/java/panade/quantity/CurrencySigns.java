package panade.quantity;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Signs and codes of currencies (ISO 4217) beside a number, which are no part of it. */
public final class CurrencySigns {
    /** Signs of one currency, and of the dollar's and the yen's namesakes; common practice, no source. */
    private static final Map<String, Set<String>> SIGNS = Map.of(
            "$", Set.of("USD", "CAD", "AUD", "NZD", "SGD", "HKD", "TWD", "MXN", "CLP", "COP", "ARS"),
            "\u20ac", Set.of("EUR"),
            "\u00a3", Set.of("GBP"),
            "\u00a5", Set.of("JPY", "CNY"));

    private CurrencySigns() {}

    /**
     * Money without the sign or code of its currency; unchanged where there is none.
     *
     * @param money a number, perhaps with a sign or code before or behind it
     * @param currency the code of the currency that all prices are in; empty where nothing states it
     * @return empty where the sign is not known to be that currency's
     */
    public static Optional<String> without(String money, String currency) {
        var plain = stripped(money);
        if (plain.sign().isEmpty()) {
            return Optional.of(money);
        }
        boolean fits = plain.sign().equals(currency)
                || SIGNS.getOrDefault(plain.sign(), Set.of()).contains(currency);
        return fits ? Optional.of(plain.number()) : Optional.empty();
    }

    /** The sign or code beside a number; empty where there is none. */
    public static String in(String money) {
        return stripped(money).sign();
    }

    private record Stripped(String sign, String number) {}

    private static Stripped stripped(String money) {
        var text = money.strip();
        return Stream.concat(SIGNS.keySet().stream(), codes(text))
                .filter(sign -> !sign.isEmpty() && (text.startsWith(sign) || text.endsWith(sign)))
                .findFirst()
                .map(sign -> new Stripped(sign, rest(text, sign)))
                .orElse(new Stripped("", money));
    }

    private static String rest(String text, String sign) {
        return (text.startsWith(sign)
                        ? text.substring(sign.length())
                        : text.substring(0, text.length() - sign.length()))
                .strip();
    }

    /** Three capital letters at an end. */
    private static Stream<String> codes(String text) {
        return text.length() < 4
                ? Stream.empty()
                : Stream.of(text.substring(0, 3), text.substring(text.length() - 3))
                        .filter(code -> code.chars().allMatch(c -> c >= 'A' && c <= 'Z'));
    }
}
