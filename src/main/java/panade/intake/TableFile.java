package panade.intake;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import panade.document.Documents;
import panade.document.syntax.Reading;
import panade.domain.origin.Origin;
import panade.domain.pantry.Property;
import panade.intake.price.CsvGrid;
import panade.intake.table.Faults;
import panade.intake.table.Table;
import panade.intake.table.Tables;
import panade.sheet.Grid;
import panade.sheet.Spreadsheets;
import panade.sheet.WorkbookTooLarge;

/** Finds the tables of ingredients and prices in a workbook or a CSV file. */
final class TableFile {
    private final Request request;
    private final Spreadsheets spreadsheets;
    private final Map<String, Property> known;
    private final Faults faults;
    private final List<String> notes;
    private final String shown;

    /**
     * A file.
     *
     * @param known components and traits that columns may be of
     * @param notes is told of sheets that are passed over
     */
    TableFile(
            Request request,
            Spreadsheets spreadsheets,
            Map<String, Property> known,
            Faults faults,
            List<String> notes) {
        this.request = request;
        this.spreadsheets = spreadsheets;
        this.known = known;
        this.faults = faults;
        this.notes = notes;
        this.shown = request.file().toString();
    }

    /** Tables with our headings; where no sheet has them, those with other people's words for them. */
    List<Table> tables() {
        var grids = grids().stream()
                .filter(grid -> request.sheet() == null || request.sheet().equals(grid.name()))
                .toList();
        var tables = new ArrayList<>(grids.stream()
                .flatMap(grid -> Tables.ours(shown, grid, request.columns(), known, faults).stream())
                .toList());
        if (tables.isEmpty()) {
            grids.forEach(grid -> Tables.guessed(shown, grid, request.columns(), known, faults)
                    .ifPresent(tables::add));
        }
        grids.stream()
                .filter(grid ->
                        tables.stream().noneMatch(table -> table.grid().name().equals(grid.name())))
                .forEach(this::passOver);
        if (tables.isEmpty() && faults.none()) {
            refuse();
        }
        return tables;
    }

    private List<Grid> grids() {
        var name = shown.toLowerCase(Locale.ROOT);
        return name.endsWith(".xlsx") ? workbook() : name.endsWith(".csv") ? csv() : unknown();
    }

    private void refuse() {
        faults.add(
                new Origin(shown, 0, 0, ""),
                "No table of ingredients or prices was found"
                        + (request.sheet() == null ? "" : " on a sheet called \"" + request.sheet() + "\""),
                "Expected a row of headings near the top: \"id\" or \"name\" with tagnames such as PROCNT, or"
                        + " \"ingredient\" and \"price\".",
                "Columns that are called otherwise can be named: --column \"Protein=PROCNT\".");
    }

    private void passOver(Grid grid) {
        if (!grid.rows().isEmpty() && !grid.name().isEmpty()) {
            notes.add("The sheet \"" + grid.name() + "\" is no table of ingredients or prices.");
        }
    }

    private List<Grid> workbook() {
        if (!Files.isRegularFile(request.file())) {
            text();
            return List.of();
        }
        try {
            return spreadsheets.read(request.file());
        } catch (WorkbookTooLarge e) {
            faults.add(
                    new Origin(shown, 0, 0, ""),
                    "This workbook is too large: " + e.getMessage(),
                    "Expected tables of ingredients or prices alone: delete the rest, or save the one sheet as CSV.");
            return List.of();
        } catch (IOException e) {
            faults.add(
                    new Origin(shown, 0, 0, ""),
                    "This is not a workbook that can be read",
                    "Expected a file saved as an Excel workbook (.xlsx), or as CSV.");
            return List.of();
        }
    }

    private List<Grid> csv() {
        return text().flatMap(text -> CsvGrid.of(text, shown, faults)).stream().toList();
    }

    private List<Grid> unknown() {
        faults.add(
                new Origin(shown, 0, 0, ""),
                "This kind of file cannot be taken in",
                "Expected a workbook (.xlsx), a table (.csv) or a download of USDA FoodData Central (.json).");
        return List.of();
    }

    /** The file's text, or a fault. */
    private Optional<String> text() {
        var reading = Documents.text(request.file());
        if (reading instanceof Reading.Rejected<String> rejected) {
            rejected.problems().forEach(faults::add);
            return Optional.empty();
        }
        return Optional.of(((Reading.Accepted<String>) reading).value());
    }
}
