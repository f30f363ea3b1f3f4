package panade.document.syntax;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import panade.domain.origin.Origin;

/** Reads a file as UTF-8 text, strictly, without its byte order mark. */
public final class TextFile {
    private static final int MEGABYTE = 1_000_000;

    /** A document that is larger was not written by anybody, and would fill the memory. */
    private static final int LARGEST = 50 * MEGABYTE;

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private TextFile() {}

    /** The text; a file that is not there, is a folder or is not UTF-8 is told. */
    public static Optional<String> read(Path file, String shownAs, Problems problems) {
        problems.opened(shownAs);
        if (Files.isDirectory(file)) {
            return refuse(new Origin(shownAs, 1, 1, ""), "This is a folder", "Expected a file.", problems);
        }
        try (var in = Files.newInputStream(file)) {
            var bytes = in.readNBytes(LARGEST + 1);
            return bytes.length <= LARGEST
                    ? decode(bytes, shownAs, problems)
                    : refuse(
                            new Origin(shownAs, 1, 1, ""),
                            "The file is larger than " + LARGEST / MEGABYTE + " MB",
                            "Expected a document or a table that somebody wrote.",
                            problems);
        } catch (IOException e) {
            return missing(file, shownAs, problems);
        }
    }

    private static Optional<String> missing(Path file, String shownAs, Problems problems) {
        var beside = beside(file);
        problems.unknown(
                new Origin(shownAs, 1, 1, ""),
                "The file is not there or cannot be read",
                file.toString(),
                beside,
                "Expected the path of a file, from the folder you are in.");
        return Optional.empty();
    }

    /** Files in the same folder that can be read, as the user would type them. */
    private static List<String> beside(Path file) {
        var folder = Objects.requireNonNullElse(file.getParent(), Path.of(""));
        try (var files = Files.list(folder)) {
            return files.filter(Files::isReadable).map(Path::toString).sorted().toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    private static Optional<String> decode(byte[] bytes, String shownAs, Problems problems) {
        var decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        var buffer = ByteBuffer.wrap(bytes);
        try {
            var text = decoder.decode(buffer).toString();
            return Optional.of(text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text);
        } catch (CharacterCodingException e) {
            var before = new String(bytes, 0, buffer.position(), StandardCharsets.UTF_8);
            var place = TextPlace.at(before, before.length());
            return refuse(
                    new Origin(shownAs, place.line(), place.column(), ""),
                    "The text is not UTF-8 from here on",
                    "Expected a file saved as UTF-8 (\"Save as\", encoding UTF-8).",
                    problems);
        }
    }

    private static Optional<String> refuse(Origin origin, String what, String advice, Problems problems) {
        problems.add(origin, what, advice);
        return Optional.empty();
    }
}
