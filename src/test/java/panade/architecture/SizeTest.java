package panade.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** Keeps files and methods small enough to read at one sitting. */
class SizeTest {
    private static final Path SOURCES = Path.of("src/main/java");

    @Test
    void no_file_is_over_400_lines_and_half_are_under_120() throws IOException {
        var lengths = new ArrayList<Integer>();
        for (var file : files()) {
            lengths.add(Files.readAllLines(file, StandardCharsets.UTF_8).size());
        }
        assertThat(lengths).hasSizeGreaterThan(40).allMatch(length -> length <= 400);
        assertThat(median(lengths)).isLessThanOrEqualTo(120);
    }

    @Test
    void no_method_is_over_50_lines_and_half_are_within_5() throws IOException {
        var lengths = methodLengths();
        assertThat(lengths).hasSizeGreaterThan(200);
        assertThat(lengths.entrySet()).allMatch(method -> method.getValue() <= 50);
        assertThat(median(List.copyOf(lengths.values()))).isLessThanOrEqualTo(5);
    }

    private static int median(List<Integer> values) {
        return values.stream().sorted().toList().get(values.size() / 2);
    }

    private static List<Path> files() throws IOException {
        try (var paths = Files.walk(SOURCES)) {
            return paths.filter(path -> path.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        }
    }

    private static Map<String, Integer> methodLengths() throws IOException {
        var compiler = ToolProvider.getSystemJavaCompiler();
        try (var manager = compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
            var task = (JavacTask) compiler.getTask(
                    null, manager, null, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(files()));
            var lengths = new TreeMap<String, Integer>();
            var positions = Trees.instance(task).getSourcePositions();
            for (var unit : task.parse()) {
                new MethodScanner(unit, positions, lengths).scan(unit, null);
            }
            return lengths;
        }
    }

    /** Notes how many lines stand between the braces of each method. */
    private static final class MethodScanner extends TreePathScanner<Void, Void> {
        private final CompilationUnitTree unit;
        private final SourcePositions positions;
        private final Map<String, Integer> lengths;

        MethodScanner(CompilationUnitTree unit, SourcePositions positions, Map<String, Integer> lengths) {
            this.unit = unit;
            this.positions = positions;
            this.lengths = lengths;
        }

        @Override
        public Void visitMethod(MethodTree method, Void nothing) {
            if (method.getBody() != null) {
                long start = positions.getStartPosition(unit, method.getBody());
                long end = positions.getEndPosition(unit, method.getBody());
                var lines = unit.getLineMap();
                long length = Math.max(0, lines.getLineNumber(end) - lines.getLineNumber(start) - 1);
                lengths.put(unit.getSourceFile().getName() + "#" + method.getName() + "@" + start, (int) length);
            }
            return super.visitMethod(method, null);
        }
    }
}
