package panade.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The table of packages in DEVELOPERS.md is the rule: each package uses exactly those that its row names.
 * {@code -Drooms.write=true} writes the last column anew; read what changed before committing it.
 */
class RoomsTest {
    private static final Path GUIDE = Path.of("DEVELOPERS.md");
    private static final Pattern ROW = Pattern.compile("^\\| `([a-z.]+)` \\| (.+?) \\| (.*?) ?\\|$", Pattern.MULTILINE);
    private static final int MOST_FILES = 20;

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("panade");

    @Test
    void each_package_uses_exactly_what_its_row_in_the_guide_names() throws IOException {
        var used = usedByPackage();
        if (Boolean.getBoolean("rooms.write")) {
            write(used);
        }
        var written = new TreeMap<String, String>();
        rows().forEach(row -> written.put(row.group(1), row.group(3)));
        var found = new TreeMap<String, String>();
        used.forEach((name, others) -> found.put(name, cell(others)));
        assertThat(written).containsExactlyInAnyOrderEntriesOf(found);
    }

    @Test
    void a_row_of_the_guide_uses_only_packages_of_rows_before_it() throws IOException {
        var before = new TreeSet<String>();
        for (var row : rows()) {
            assertThat(before).as("what %s uses stands above it", row.group(1)).containsAll(names(row.group(3)));
            before.add(row.group(1));
        }
    }

    @Test
    void no_package_has_more_than_twenty_files() throws IOException {
        for (var name : usedByPackage().keySet()) {
            var folder = Path.of("src/main/java/panade").resolve(name.replace('.', '/'));
            try (var files = Files.list(folder)) {
                assertThat(files.filter(file -> file.toString().endsWith(".java"))
                                .filter(file -> !file.endsWith("package-info.java")))
                        .as(name)
                        .hasSizeLessThanOrEqualTo(MOST_FILES);
            }
        }
    }

    private static List<java.util.regex.MatchResult> rows() throws IOException {
        return ROW.matcher(Files.readString(GUIDE)).results().toList();
    }

    private static List<String> names(String cell) {
        return Pattern.compile("`([a-z.]+)`")
                .matcher(cell)
                .results()
                .map(name -> name.group(1))
                .toList();
    }

    private static void write(SortedMap<String, SortedSet<String>> used) throws IOException {
        var text = ROW.matcher(Files.readString(GUIDE))
                .replaceAll(row -> Matcher.quoteReplacement("| `%s` | %s | %s |"
                        .formatted(
                                row.group(1), row.group(2), cell(used.getOrDefault(row.group(1), new TreeSet<>())))));
        Files.writeString(GUIDE, text.replace(" |  |", " | |"));
    }

    private static String cell(SortedSet<String> names) {
        return names.stream().map(name -> "`" + name + "`").collect(Collectors.joining(" "));
    }

    private static SortedMap<String, SortedSet<String>> usedByPackage() {
        var used = new TreeMap<String, SortedSet<String>>();
        for (var type : CLASSES) {
            var others = used.computeIfAbsent(name(type), key -> new TreeSet<>());
            type.getDirectDependenciesFromSelf().stream()
                    .map(dependency -> dependency.getTargetClass().getBaseComponentType())
                    .filter(other -> other.getPackageName().startsWith("panade."))
                    .filter(other -> !name(other).equals(name(type)))
                    .forEach(other -> others.add(name(other)));
        }
        return used;
    }

    private static String name(JavaClass type) {
        return type.getPackageName().substring("panade.".length());
    }
}
