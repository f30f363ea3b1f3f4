package panade.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import panade.report.Block.Paragraph;

/** The words that reports use, explained to a cook. */
public final class Glossary {
    private static final int SHORT = 3;
    private static final String SEE = "See: ";

    private final List<Entry> entries = new ArrayList<>();

    private record Entry(List<String> names, List<String> paragraphs, List<String> see) {
        boolean has(String name) {
            return names.stream().map(Glossary::plain).anyMatch(name::equals);
        }

        /** Words of its names that may do for the whole. */
        List<String> words() {
            return names.stream()
                    .flatMap(name -> Arrays.stream(plain(name).split(" ", -1)))
                    .filter(word -> word.length() > SHORT)
                    .toList();
        }
    }

    /** The glossary as it is written beside this class. */
    public Glossary() {
        Arrays.stream(text().split("(?m)^# ", -1))
                .filter(entry -> !entry.isBlank())
                .forEach(entry -> entries.add(entry(entry)));
    }

    private static String text() {
        try (InputStream file = Glossary.class.getResourceAsStream("glossary.txt")) {
            if (file == null) {
                throw new IllegalStateException("the glossary is missing from the program");
            }
            return new String(file.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Entry entry(String text) {
        int end = text.indexOf('\n');
        var names = List.of(text.substring(0, end).split("; ", -1));
        var paragraphs = new ArrayList<String>();
        var see = new ArrayList<String>();
        for (var paragraph : text.substring(end + 1).strip().split("\n\n", -1)) {
            int last = paragraph.lastIndexOf(SEE);
            paragraphs.add((last < 0 ? paragraph : paragraph.substring(0, last))
                    .strip()
                    .replace('\n', ' '));
            if (last >= 0) {
                see.addAll(List.of(paragraph.substring(last + SEE.length()).split(", ", -1)));
            }
        }
        return new Entry(names, paragraphs, see);
    }

    /** What a term means, under any of its names and however it is spelt in capitals; empty when it is not there. */
    public Optional<ReportDocument> explain(String term) {
        var wanted = plain(term);
        var named = entries.stream().filter(entry -> entry.has(wanted)).toList();
        var hinted =
                entries.stream().filter(entry -> entry.words().contains(wanted)).toList();
        var found = named.isEmpty() && hinted.size() == 1 ? hinted : named;
        return found.stream().findFirst().map(Glossary::document);
    }

    private static String plain(String term) {
        return term.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", " ");
    }

    private static ReportDocument document(Entry entry) {
        var blocks = new ArrayList<Block>();
        entry.paragraphs().forEach(words -> blocks.add(new Paragraph(words)));
        if (!entry.see().isEmpty()) {
            blocks.add(new Paragraph("See also: " + String.join(", ", entry.see()) + "."));
        }
        return new ReportDocument(String.join(", ", entry.names()), blocks);
    }

    /** Everything that can be asked for: names, and single words of one entry's names. */
    public List<String> names() {
        return entries.stream()
                .flatMap(entry -> Stream.concat(
                        entry.names().stream(),
                        entry.words().stream().filter(word -> explain(word).isPresent())))
                .distinct()
                .toList();
    }

    /** All terms, one name of each. */
    public ReportDocument contents() {
        var first = entries.stream().map(entry -> entry.names().get(0)).sorted().toList();
        return new ReportDocument("What can be explained", List.of(new Paragraph(String.join(", ", first) + ".")));
    }
}
