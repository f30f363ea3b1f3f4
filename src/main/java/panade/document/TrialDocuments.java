package panade.document;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import panade.document.syntax.Checked;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.JsonDocument;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Overrides;
import panade.document.syntax.Problems;
import panade.document.syntax.Reading;
import panade.document.syntax.References;
import panade.document.trial.TrialsReader;
import panade.domain.Brief;
import panade.domain.trial.TrialSet;
import panade.domain.trial.Weighed;

/** Reads a document of trials, and the brief that it names. */
final class TrialDocuments {
    private final Path file;
    private final Problems problems = new Problems();
    private final Expect expect = new Expect(problems);

    private final List<Path> tables;

    /**
     * A document.
     *
     * @param tables beside those that it names
     */
    TrialDocuments(Path file, List<Path> tables) {
        this.file = file;
        this.tables = List.copyOf(tables);
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
                .read(root.orElseThrow(), file.toString(), tables)
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
        return reading instanceof Reading.Accepted<TrialSet> accepted
                ? new Checked(List.of(), accepted.value().remarks(), Optional.empty())
                : new Checked(((Reading.Rejected<TrialSet>) reading).problems(), List.of(), Optional.empty());
    }
}
