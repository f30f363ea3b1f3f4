package panade.document;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The base kitchen with something odd in it, and what the program says of it. A case is written in lines, each with a
 * mark in its first column: {@code =} the name, {@code #} what the case is for, {@code @} the document that the
 * following lines change, {@code -} a text that occurs once in the document, {@code +} what stands in its place,
 * {@code |} the whole document where it has little in common with the base, {@code >} what is told, whole.
 *
 * @param lines all lines but those of what is told
 * @param told what is told, with the documents named relative to their folder
 */
record DocumentCase(List<String> lines, String told) {
    private static final Path BASE = DocumentCases.FOLDER.resolve("base");

    DocumentCase {
        lines = List.copyOf(lines);
    }

    String name() {
        return lines.get(0).substring(2);
    }

    /** Writes the documents of the case and returns the brief among them. */
    String writeTo(Path folder) throws IOException {
        for (var document : documents().entrySet()) {
            var path = folder.resolve(document.getKey());
            Files.createDirectories(path.getParent());
            Files.write(path, MarkedText.bytes(document.getValue()));
        }
        return folder.resolve("constraints").resolve("brief.json").toString();
    }

    private Map<String, String> documents() throws IOException {
        var documents = base();
        var file = "";
        var replaced = "";
        for (var block : blocks()) {
            var text = block.text();
            switch (block.mark()) {
                case '@' -> file = text;
                case '-' -> replaced = text;
                case '+' -> documents.put(file, replacedOnce(documents.getOrDefault(file, ""), replaced, text));
                case '|' -> documents.put(file, text + "\n");
                default -> {}
            }
        }
        return documents;
    }

    private static Map<String, String> base() throws IOException {
        var documents = new TreeMap<String, String>();
        try (var paths = Files.walk(BASE)) {
            for (var path : paths.filter(Files::isRegularFile).toList()) {
                documents.put(BASE.relativize(path).toString().replace('\\', '/'), Files.readString(path));
            }
        }
        return documents;
    }

    private String replacedOnce(String document, String text, String other) {
        int place = document.indexOf(text);
        if (place < 0 || document.indexOf(text, place + 1) >= 0) {
            throw new IllegalStateException(name() + ": does not occur once: " + text);
        }
        return document.substring(0, place) + other + document.substring(place + text.length());
    }

    private List<Block> blocks() {
        var blocks = new ArrayList<Block>();
        for (var line : lines) {
            var next = new Block(line.charAt(0), line.length() < 2 ? "" : line.substring(2));
            int last = blocks.size() - 1;
            if (last >= 0 && blocks.get(last).mark() == next.mark()) {
                blocks.set(last, blocks.get(last).then(next.text()));
            } else {
                blocks.add(next);
            }
        }
        return blocks;
    }

    /** Successive lines with one mark, without it. */
    private record Block(char mark, String text) {
        private Block then(String line) {
            return new Block(mark, text + "\n" + line);
        }
    }
}
