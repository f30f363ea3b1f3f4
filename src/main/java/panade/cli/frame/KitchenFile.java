package panade.cli.frame;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import panade.file.WholeFile;
import panade.sheet.Book;
import panade.sheet.poi.PoiSpreadsheets;
import picocli.CommandLine.Model.CommandSpec;

/** The file of a kitchen's workbook, never one that is there already: somebody filled it. */
public record KitchenFile(Path file, @Nullable CommandSpec spec) {
    /** Refuses a file that must not be written, before anything is worked out. */
    public void check() {
        if (!file.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
            throw UsageErrors.in(spec, "--xlsx " + file + ": expected a name that ends in .xlsx.");
        }
        if (Files.exists(file)) {
            throw UsageErrors.in(spec, "--xlsx " + file + ": is already there: choose another name.");
        }
    }

    /** Writes the workbook. */
    public void write(Book book) {
        try {
            WholeFile.write(file, new PoiSpreadsheets().write(book));
        } catch (IOException e) {
            throw UsageErrors.in(spec, "--xlsx " + file + ": cannot be written there.");
        }
    }
}
