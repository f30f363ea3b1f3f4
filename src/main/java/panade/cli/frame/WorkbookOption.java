package panade.cli.frame;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import panade.file.WholeFile;
import panade.render.PlainText;
import panade.sheet.Book;
import panade.sheet.poi.PoiSpreadsheets;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Writes the answer as a spreadsheet too, where that is asked for. */
public final class WorkbookOption {
    @Spec(Spec.Target.MIXEE)
    private @Nullable CommandSpec spec;

    @Option(
            names = "--xlsx",
            paramLabel = "FILE",
            description = "Also write the answer as a spreadsheet whose sums stay live.")
    private @Nullable Path file;

    @Option(names = "--overwrite", description = "Write the spreadsheet even where such a file is already there.")
    private boolean overwrite;

    /** Refuses, before anything is worked out, a file that cannot or must not be written. */
    public void check() {
        if (file == null) {
            return;
        }
        if (!file.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
            throw wrong("expected a name that ends in .xlsx.");
        }
        if (Files.isDirectory(file) || (Files.exists(file) && !overwrite)) {
            throw wrong("is already there: choose another name, or say --overwrite.");
        }
        var folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw wrong("there is no folder " + folder + ".");
        }
    }

    private ParameterException wrong(String message) {
        return new ParameterException(Objects.requireNonNull(spec).commandLine(), "--xlsx " + file + ": " + message);
    }

    /** Writes the book where one was asked for, and says so. */
    public void write(Supplier<Book> book, PrintWriter err) {
        if (file == null) {
            return;
        }
        var bytes = new PoiSpreadsheets().write(book.get());
        try {
            WholeFile.write(file, bytes);
            err.println(PlainText.line("Written: " + file));
        } catch (IOException e) {
            throw wrong("cannot be written there.");
        }
    }
}
