package panade.cli.frame;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import panade.cli.setting.TriedFormula;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.trial.Formula;
import picocli.CommandLine.Option;

/** The option of a command that takes a brief, and a formula as well. */
public final class FormulaOption {
    @Option(
            names = "--brief",
            paramLabel = "BRIEF",
            description = "Take the other file as a formula (a document, a table, the sheet Formula of a workbook, a"
                    + " result of --json) under this brief.")
    private @Nullable Path under;

    /** Whether a file is to be taken as a formula. */
    public boolean isFormula(Path file) {
        return under != null || Documents.isFormula(file);
    }

    /** Reads a formula, under the brief that is asked for or else under its own. */
    public Reading<Formula> read(Path file, Overrides overrides) {
        return Documents.readFormula(file, under, overrides);
    }

    /** A formula with the numbers that are to be tried. */
    public TriedFormula tried(Path file, Overrides overrides) {
        return new TriedFormula(file, under, overrides);
    }
}
