package panade.document;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import panade.document.syntax.Checked;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.JsonDocument;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Overrides;
import panade.document.syntax.Problems;
import panade.document.syntax.Reading;
import panade.document.syntax.References;
import panade.document.trial.TrialsReader;
import panade.domain.Brief;
import panade.domain.origin.Remark;
import panade.domain.trial.Formula;
import panade.domain.trial.TrialSet;
import panade.domain.trial.Weighed;
import panade.quantity.Decimal;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/** Reads a document of trials, and the brief that it names. */
final class TrialDocuments {
    private static final int BATCH_DIGITS = 6;

    private final Path file;
    private final Problems problems = new Problems();
    private final Expect expect = new Expect(problems);

    TrialDocuments(Path file) {
        this.file = file;
    }

    Reading<TrialSet> read() {
        var root = JsonDocument.read(file, file.toString(), problems)
                .flatMap(node -> expect.object(node, "trials, such as {\"brief\": \"filling.json\", \"trials\": []}"));
        var path = root.flatMap(this::brief);
        if (path.isEmpty()) {
            return new Reading.Rejected<>(problems.inOrder());
        }
        var brief = Documents.readBrief(path.get(), Overrides.NONE);
        if (brief instanceof Reading.Rejected<Brief> rejected) {
            return new Reading.Rejected<>(rejected.problems());
        }
        return new TrialsReader(((Reading.Accepted<Brief>) brief).value(), problems)
                .read(root.orElseThrow(), file.toString())
                .<Reading<TrialSet>>map(Reading.Accepted::new)
                .orElseGet(() -> new Reading.Rejected<>(problems.inOrder()));
    }

    private Optional<Path> brief(ObjectNode root) {
        var field = root.field("brief");
        if (field.isEmpty()) {
            problems.add(
                    root.origin(), "\"brief\" is missing", "Expected the path of the brief, such as \"filling.json\".");
        }
        return field.flatMap(found -> expect.text(found.value(), "the path of the brief"))
                .flatMap(new References(problems)::file);
    }

    /** A formula with the brief that it names, in the batch that its weights add up to unless another is asked for. */
    Reading<Formula> readFormula(Overrides overrides) {
        var root = formula();
        var path = root.flatMap(this::brief);
        if (path.isEmpty()) {
            return new Reading.Rejected<>(problems.inOrder());
        }
        var reading = Documents.readBrief(path.get(), overrides);
        if (reading instanceof Reading.Rejected<Brief> rejected) {
            return new Reading.Rejected<>(rejected.problems());
        }
        var brief = ((Reading.Accepted<Brief>) reading).value();
        return made(root)
                .flatMap(new TrialsReader(brief, problems)::weighed)
                .map(weighed -> formula(root.orElseThrow(), weighed, brief, overrides.batch() != null))
                .filter(found -> problems.none())
                .<Reading<Formula>>map(Reading.Accepted::new)
                .orElseGet(() -> new Reading.Rejected<>(problems.inOrder()));
    }

    private Formula formula(ObjectNode root, Weighed weighed, Brief brief, boolean hasOtherBatch) {
        var title = root.field("title")
                .flatMap(field -> expect.text(field.value(), "a text"))
                .map(TextNode::text)
                .orElse(file.toString());
        var grams = Unit.GRAM.fromBase(weighed.total());
        var text = Decimal.significant(grams, BATCH_DIGITS).toPlainString() + " g";
        var made = hasOtherBatch ? brief : brief.withBatch(Quantity.of(grams, Unit.GRAM, text));
        return new Formula(title, made.remarking(problems.remarks()), weighed);
    }

    private Optional<ObjectNode> formula() {
        return JsonDocument.read(file, file.toString(), problems)
                .flatMap(node -> expect.object(node, "a formula, such as {\"made\": {\"mix\": {\"salt\": \"45 g\"}}}"));
    }

    private Optional<Node> made(Optional<ObjectNode> root) {
        return root.map(found -> new Fields(found, problems, "title", "brief", "made", "note"))
                .flatMap(fields -> fields.required("made", "what is weighed, such as {\"mix\": {\"salt\": \"45 g\"}}"));
    }

    Reading<Weighed> readMade(TrialSet trials) {
        var made = made(formula());
        var reader = new TrialsReader(trials.brief(), problems);
        var weighed = made.flatMap(reader::weighed);
        weighed.ifPresent(found -> reader.checkFormula(
                trials.responses(), found, made.orElseThrow().origin()));
        return weighed.filter(found -> problems.none())
                .<Reading<Weighed>>map(Reading.Accepted::new)
                .orElseGet(() -> new Reading.Rejected<>(problems.inOrder()));
    }

    /** The same as something that was looked over. */
    static Checked checked(Reading<TrialSet> reading) {
        return checked(reading, TrialSet::remarks);
    }

    /** A formula as something that was looked over, with its brief. */
    static Checked checkedFormula(Reading<Formula> reading) {
        return checked(reading, formula -> formula.brief().remarks());
    }

    private static <T> Checked checked(Reading<T> reading, Function<T, List<Remark>> remarks) {
        return reading instanceof Reading.Accepted<T> accepted
                ? new Checked(List.of(), remarks.apply(accepted.value()), Optional.empty())
                : new Checked(((Reading.Rejected<T>) reading).problems(), List.of(), Optional.empty());
    }
}
