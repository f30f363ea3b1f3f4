package panade.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** DEVELOPERS.md speaks of classes that are there. */
class GuideTest {
    /** A class in backquotes, perhaps with its package before it and a member after it. */
    private static final Pattern NAMED = Pattern.compile("`(?:[a-z]+\\.)*([A-Z][a-z]+[A-Za-z]*)(?:[.(:][^`]*)?`");

    private static final Pattern KNOWN =
            Pattern.compile("\\b(?:class|record|interface|enum|import [\\w.]+\\.)\\s*(?<![a-z])([A-Z]\\w*)");

    @Test
    void each_class_that_the_guide_names_is_in_the_sources() throws IOException {
        var named = matches(NAMED, Files.readString(Path.of("DEVELOPERS.md")));
        assertThat(named).hasSizeGreaterThan(40);
        assertThat(known()).containsAll(named);
    }

    private static SortedSet<String> known() throws IOException {
        var known = new TreeSet<String>();
        try (var files = Files.walk(Path.of("src"))) {
            for (var file :
                    files.filter(each -> each.toString().endsWith(".java")).toList()) {
                known.addAll(matches(KNOWN, Files.readString(file)));
            }
        }
        return known;
    }

    private static SortedSet<String> matches(Pattern pattern, String text) {
        var found = new TreeSet<String>();
        pattern.matcher(text).results().forEach(match -> found.add(match.group(1)));
        return found;
    }
}
