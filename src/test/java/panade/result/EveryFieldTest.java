package panade.result;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonValue;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Who shows what of the results: a line for each component of a record, with the readers that ask for it. A component
 * that is new, or that a reader takes up or leaves out, changes the list; {@code -Dreaders.write=true} writes it anew.
 * Read what changed before committing it: a reader that is missing was left out on purpose.
 */
class EveryFieldTest {
    private static final Path LIST = Path.of("src/test/resources/result/readers.txt");

    /** Readers by the packages that they are made of; the page shows the words of the text as well. */
    private static final Map<String, List<String>> READERS = new TreeMap<>(Map.of(
            "text", List.of("panade.report"),
            "page", List.of("panade.page"),
            "workbook", List.of("panade.workbook"),
            "csv", List.of("panade.export")));

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("panade");

    @Test
    void each_field_of_a_result_is_shown_by_the_readers_on_the_list() throws IOException {
        var lines = lines();
        if (Boolean.getBoolean("readers.write")) {
            Files.write(LIST, lines);
        }
        assertThat(lines).containsExactlyElementsOf(Files.readAllLines(LIST));
    }

    @Test
    void no_field_of_a_result_is_made_for_nobody() {
        assertThat(lines()).allMatch(line -> line.split(" ").length > 1);
    }

    private static List<String> lines() {
        return CLASSES.stream()
                .filter(type -> type.getPackageName().startsWith("panade.result") && type.isRecord())
                .sorted((a, b) -> a.getName().compareTo(b.getName()))
                .flatMap(EveryFieldTest::lines)
                .toList();
    }

    private static Stream<String> lines(JavaClass type) {
        var record = type.reflect();
        return Stream.of(record.getRecordComponents()).map(component -> {
            var readers = new LinkedHashSet<String>();
            if (isWritten(component)) {
                readers.add("json");
            }
            readers.addAll(readers(type.getMethod(component.getName())));
            var name = record.getName().substring("panade.result.".length()).replace('$', '.');
            return name + "." + component.getName() + (readers.isEmpty() ? "" : " " + String.join(" ", readers));
        });
    }

    private static boolean isWritten(RecordComponent component) {
        var field = Stream.of(component.getDeclaringRecord().getDeclaredFields())
                .filter(each -> each.getName().equals(component.getName()))
                .findFirst()
                .orElseThrow();
        return !field.isAnnotationPresent(JsonIgnore.class)
                && Stream.of(component.getDeclaringRecord().getDeclaredMethods())
                        .noneMatch(method -> method.isAnnotationPresent(JsonValue.class)
                                && !method.getName().equals(component.getName()));
    }

    /** Who calls the accessor, or any method of the results that does. */
    private static Set<String> readers(JavaMethod accessor) {
        var readers = new LinkedHashSet<String>();
        var seen = new LinkedHashSet<JavaMethod>(List.of(accessor));
        var todo = new ArrayDeque<>(seen);
        while (!todo.isEmpty()) {
            var method = todo.poll();
            Stream.concat(method.getCallsOfSelf().stream(), method.getReferencesToSelf().stream())
                    .map(JavaAccess::getOrigin)
                    .forEach(origin -> {
                        var from = origin.getOwner().getPackageName();
                        READERS.forEach((reader, packages) -> {
                            if (packages.stream().anyMatch(each -> from.equals(each) || from.startsWith(each + "."))) {
                                readers.add(reader);
                            }
                        });
                        if (from.startsWith("panade.result") && origin instanceof JavaMethod own && seen.add(own)) {
                            todo.add(own);
                        }
                    });
        }
        return new TreeSet<>(readers);
    }
}
