package panade.document.offer;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import panade.document.syntax.Problems;

/** Price lists written again with some of their cells changed (RFC 4180); nothing is lost but spacing. */
public final class PriceListText {
    private PriceListText() {}

    /**
     * The text of a list with other cells.
     *
     * @param cells by line and column
     * @return empty where the list cannot be read
     */
    public static Optional<String> of(Path file, Map<Integer, Map<String, String>> cells) {
        var kind = PriceListReader.KIND;
        return CsvTable.read(file, file.toString(), kind, new Problems()).map(rows -> {
            Set<String> named = new TreeSet<>();
            rows.forEach(row -> named.addAll(row.cells().keySet()));
            cells.values().forEach(row -> named.addAll(row.keySet()));
            var columns = kind.columns().stream().filter(named::contains).toList();
            var lines = new ArrayList<String>(List.of(String.join(",", columns)));
            rows.forEach(row ->
                    lines.add(line(columns, row, cells.getOrDefault(row.origin().line(), Map.of()))));
            return String.join("\n", lines) + "\n";
        });
    }

    private static String line(List<String> columns, CsvTable.Row row, Map<String, String> cells) {
        return columns.stream()
                .map(column -> cells.getOrDefault(column, written(row, column)))
                .map(PriceListText::quoted)
                .collect(Collectors.joining(","));
    }

    private static String written(CsvTable.Row row, String column) {
        var cell = row.cells().get(column);
        return cell == null ? "" : cell.content();
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars()
                .noneMatch(each -> each == ',' || each == '"' || each == '\n' || each == '\r' || each == ';');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
