package panade.document;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import panade.document.kitchen.Workbook;
import panade.document.syntax.Checked;
import panade.document.syntax.Expect;
import panade.document.syntax.JsonDocument;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Overrides;
import panade.document.syntax.Problems;
import panade.document.syntax.Reading;
import panade.document.syntax.References;
import panade.document.trial.FormulaReader;
import panade.document.trial.FormulaTable;
import panade.document.trial.ResultFormula;
import panade.domain.Brief;
import panade.domain.trial.Formula;

/** Reads a formula, and the brief that it is looked at under. */
final class FormulaDocuments {
    private final Path file;
    private final @Nullable Path brief;
    private final Overrides overrides;
    private final Problems problems = new Problems();
    private final Expect expect = new Expect(problems);

    /**
     * A reader of one formula.
     *
     * @param brief in place of the one that it names; null to take that
     */
    FormulaDocuments(Path file, @Nullable Path brief, Overrides overrides) {
        this.file = file;
        this.brief = brief;
        this.overrides = overrides;
    }

    /** The formula, or everything that is wrong with it or its brief. */
    Reading<Formula> read() {
        var root = root();
        var path = root.flatMap(this::brief);
        if (path.isEmpty()) {
            return new Reading.Rejected<>(problems.inOrder());
        }
        var reading = Documents.readBrief(path.get(), overrides);
        if (reading instanceof Reading.Rejected<Brief> rejected) {
            return new Reading.Rejected<>(rejected.problems());
        }
        var found = ((Reading.Accepted<Brief>) reading).value();
        return new FormulaReader(found, overrides, problems)
                .read(root.orElseThrow(), file.toString())
                .<Reading<Formula>>map(Reading.Accepted::new)
                .orElseGet(() -> new Reading.Rejected<>(problems.inOrder()));
    }

    /** The same as something that was looked over, with its brief. */
    static Checked checked(Reading<Formula> reading) {
        return reading instanceof Reading.Accepted<Formula> accepted
                ? new Checked(List.of(), accepted.value().brief().remarks(), Optional.empty())
                : new Checked(((Reading.Rejected<Formula>) reading).problems(), List.of(), Optional.empty());
    }

    static boolean isFormula(Path file) {
        if (FormulaTable.isNamed(file)) {
            return !Workbook.isNamed(file);
        }
        return JsonDocument.read(file, file.toString(), new Problems())
                .filter(ObjectNode.class::isInstance)
                .map(ObjectNode.class::cast)
                .filter(root -> root.field("made").isPresent() || ResultFormula.is(root))
                .isPresent();
    }

    private Optional<ObjectNode> root() {
        return FormulaTable.isNamed(file) ? FormulaTable.read(file, file.toString(), problems) : json();
    }

    private Optional<ObjectNode> json() {
        return JsonDocument.read(file, file.toString(), problems)
                .flatMap(node -> expect.object(node, "a formula, such as {\"made\": {\"mix\": {\"salt\": \"45 g\"}}}"))
                .map(root -> ResultFormula.is(root) ? ResultFormula.of(root, problems) : root);
    }

    private Optional<Path> brief(ObjectNode root) {
        if (brief != null) {
            return Optional.of(brief);
        }
        if (Workbook.isNamed(file)) {
            return Optional.of(file);
        }
        var field = root.field("brief");
        if (field.isEmpty()) {
            problems.add(
                    root.origin(),
                    "It names no brief",
                    "Expected --brief with the path of one, or \"brief\": \"filling.json\" in a JSON document.");
        }
        return field.flatMap(found -> expect.text(found.value(), "the path of the brief"))
                .flatMap(new References(problems)::file);
    }
}
