package panade.document.syntax;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Node.WordNode;
import panade.domain.origin.Origin;
import panade.quantity.Decimal;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonReadFeature;

/** Reads JSON into nodes that know their place. Comments and trailing commas are accepted. */
public final class JsonDocument {
    private static final int DEEPEST = 64;
    private static final int LONGEST_NUMBER = 1_000;
    private static final int LONGEST_SHOWN = 40;

    private static final Pattern DECIMAL_COMMA = Pattern.compile("(\\d{1,20}),(\\d{1,20})");

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
            .enable(JsonReadFeature.ALLOW_TRAILING_COMMA)
            // Nesting alone can harm a reader; what is too long is told where it stands.
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxNumberLength(Integer.MAX_VALUE)
                    .maxNameLength(Integer.MAX_VALUE)
                    .maxStringLength(Integer.MAX_VALUE)
                    .build())
            .build();

    private final String file;
    private final String text;
    private final JsonParser parser;
    private final Problems problems;
    private String innermost = "";

    private JsonDocument(String file, String text, JsonParser parser, Problems problems) {
        this.file = file;
        this.text = text;
        this.parser = parser;
        this.problems = problems;
    }

    /** The root of a file; what keeps it from being read at all is told, as one problem. */
    public static Optional<Node> read(Path file, String shownAs, Problems problems) {
        return TextFile.read(file, shownAs, problems).flatMap(text -> parse(text, shownAs, problems));
    }

    /** The root of a text that is not in a file yet. */
    public static Optional<Node> parse(String text, String shownAs, Problems problems) {
        try (var parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
            return new JsonDocument(shownAs, text, parser, problems).root();
        }
    }

    private Optional<Node> root() {
        try {
            if (parser.nextToken() == null) {
                problems.add(new Origin(file, 1, 1, ""), "The file is empty", "Expected a JSON object: { ... }.");
                return Optional.empty();
            }
            var root = value("");
            if (parser.nextToken() != null) {
                problems.add(origin(""), "Something follows the end of the document", "Expected one JSON object.");
                return Optional.empty();
            }
            return Optional.of(root);
        } catch (StreamConstraintsException e) {
            return refuse(e, "Brackets are nested too deeply", "Expected no more than a few levels.");
        } catch (JacksonException e) {
            var advice = decimalComma(e).map(number -> "Decimals have a point here: write " + number + ".");
            return refuse(
                    e, "This is not JSON: " + firstSentence(e), advice.orElse("Expected valid JSON from here on."));
        }
    }

    private Optional<Node> refuse(JacksonException fault, String what, String advice) {
        TokenStreamLocation told = fault.getLocation();
        // A limit that is passed names no place of its own.
        var place = told == null || told.getLineNr() < 1 ? parser.currentLocation() : told;
        int line = Math.max(1, place.getLineNr());
        int column = Math.max(1, place.getColumnNr());
        problems.add(new Origin(file, line, column, innermost), what, advice);
        return Optional.empty();
    }

    /** The number written out, where the text stops being JSON behind the comma of a decimal. */
    private Optional<String> decimalComma(JacksonException fault) {
        var place = fault.getLocation();
        int offset = place == null ? -1 : (int) place.getCharOffset();
        if (offset < 2 || offset > text.length()) {
            return Optional.empty();
        }
        int end = Math.min(text.length(), offset + LONGEST_SHOWN);
        var around = text.substring(Math.max(0, offset - LONGEST_SHOWN), end);
        var match = DECIMAL_COMMA.matcher(around);
        int behind = Math.min(offset, LONGEST_SHOWN);
        while (match.find()) {
            if (match.start() < behind && match.end() >= behind) {
                return Optional.of(match.group(1) + "." + match.group(2));
            }
        }
        return Optional.empty();
    }

    /** The parser's own words, cut before its technical remarks. */
    private static String firstSentence(JacksonException fault) {
        var words = fault.getOriginalMessage().replaceAll("[\\r\\n].*|: was expecting.*", "");
        int remark = words.indexOf(" (");
        var cut = remark > 0 ? words.substring(0, remark) : words;
        return cut.replaceAll("[.:;\\s]+$", "");
    }

    private Node value(String pointer) {
        innermost = pointer;
        var origin = origin(pointer);
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            return new ObjectNode(origin, fields(pointer));
        }
        if (token == JsonToken.START_ARRAY) {
            return new ArrayNode(origin, items(pointer));
        }
        if (token == JsonToken.VALUE_STRING) {
            return new TextNode(origin, parser.getString());
        }
        boolean number = token == JsonToken.VALUE_NUMBER_INT || token == JsonToken.VALUE_NUMBER_FLOAT;
        return number ? number(origin) : new WordNode(origin, parser.getString());
    }

    private Node number(Origin origin) {
        var spelling = parser.getString();
        var value = spelling.length() > LONGEST_NUMBER ? Optional.<BigFraction>empty() : Decimal.parse(spelling);
        if (value.isEmpty()) {
            problems.add(
                    origin,
                    "\"" + shortened(spelling) + "\" is out of all proportion",
                    "Expected a number of everyday size, such as 0.35 or 850.");
        }
        return new NumberNode(origin, value.orElse(BigFraction.ZERO), spelling);
    }

    private static String shortened(String spelling) {
        return spelling.length() > LONGEST_SHOWN ? spelling.substring(0, LONGEST_SHOWN) + "..." : spelling;
    }

    private List<Node> items(String pointer) {
        var items = new ArrayList<Node>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(pointer + "/" + items.size()));
            innermost = pointer;
        }
        return List.copyOf(items);
    }

    private List<Field> fields(String pointer) {
        var fields = new ArrayList<Field>();
        var seen = new HashSet<String>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            var name = parser.currentName();
            var child = pointer + "/" + escaped(name);
            var nameOrigin = origin(child);
            parser.nextToken();
            var field = new Field(name, nameOrigin, value(child));
            innermost = pointer;
            if (seen.add(name)) {
                fields.add(field);
            } else {
                problems.add(nameOrigin, "\"" + name + "\" is written twice", "Expected each name once in an object.");
            }
        }
        return List.copyOf(fields);
    }

    /** A name as a JSON Pointer has it (RFC 6901, section 3). */
    private static String escaped(String name) {
        return name.replace("~", "~0").replace("/", "~1");
    }

    private Origin origin(String pointer) {
        var place = parser.currentTokenLocation();
        return new Origin(file, place.getLineNr(), place.getColumnNr(), pointer);
    }
}
