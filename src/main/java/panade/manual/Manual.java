package panade.manual;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The pages of the manual in the order in which the first of them names the others.
 *
 * @param pages the index first
 */
public record Manual(List<ManualPage> pages) {
    /** The page that names the others. */
    public static final String INDEX = "index";

    public Manual {
        pages = List.copyOf(pages);
    }

    /** The manual that the program carries. */
    public static Manual load() {
        return of(name -> resource("/panade/manual/" + name + ".md"));
    }

    /** A manual from the text of each page. */
    static Manual of(UnaryOperator<String> texts) {
        var index = new ManualPage(INDEX, texts.apply(INDEX));
        return new Manual(Stream.concat(
                        Stream.of(index), index.links().stream().map(name -> new ManualPage(name, texts.apply(name))))
                .toList());
    }

    private static String resource(String path) {
        try (InputStream stream = Manual.class.getResourceAsStream(path)) {
            return new String(Objects.requireNonNull(stream, path).readAllBytes(), StandardCharsets.UTF_8)
                    .replace("\r\n", "\n");
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The page of that name, if there is one. */
    public Optional<ManualPage> page(String name) {
        return pages.stream().filter(page -> page.name().equals(name)).findFirst();
    }

    /** The names of all pages. */
    public List<String> names() {
        return pages.stream().map(ManualPage::name).toList();
    }
}
