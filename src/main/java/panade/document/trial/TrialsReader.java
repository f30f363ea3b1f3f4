package panade.document.trial;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import panade.document.selector.NameResolver;
import panade.document.selector.Names;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.domain.Brief;
import panade.domain.origin.Origin;
import panade.domain.trial.Lever;
import panade.domain.trial.Response;
import panade.domain.trial.Trial;
import panade.domain.trial.TrialSet;
import panade.domain.trial.Weighed;

/** Reads trials of one product. */
public final class TrialsReader {
    private static final String LIST =
            "a list of trials, such as [{\"id\": \"T1\", \"weighed\": {}, \"measured\": {}}]";

    private final Brief brief;
    private final Problems problems;
    private final Expect expect;
    private final Names names;

    /** A reader of trials of what a brief is about. */
    public TrialsReader(Brief brief, Problems problems) {
        this.brief = brief;
        this.problems = problems;
        this.expect = new Expect(problems);
        this.names = Names.of(brief, problems);
    }

    /** The trials; empty when something was wrong. */
    public Optional<TrialSet> read(ObjectNode written, String shownAs) {
        return read(written, shownAs, List.of());
    }

    /**
     * The same with tables beside those that the document names.
     *
     * @param tables CSV files, or workbooks
     */
    public Optional<TrialSet> read(ObjectNode written, String shownAs, List<Path> tables) {
        var root = new NameResolver(brief.set()).resolved(written);
        var fields = new Fields(root, problems, "title", "brief", "responses", "levers", "forms", "trials", "tables");
        var title = fields.get("title").flatMap(node -> expect.text(node, "a text"));
        var shared = fields.get("levers").map(node -> new LeverReader(names).read(node));
        var forms = fields.get("forms").orElse(null);
        var responses = fields.required("responses", "what was measured, such as {\"cook loss\": {\"unit\": \"%\"}}")
                .map(node -> new ResponseReader(names).read(node, shared.orElse(List.of()), forms))
                .orElse(List.of());
        responses.stream().filter(each -> each.levers().isEmpty()).forEach(this::tellNoLevers);
        var trials = trials(fields, responses, tables);
        checkLevers(responses, trials);
        checkBlocks(trials);
        if (problems.none()) {
            new TrialRemarks(brief, problems).tell(trials);
        }
        return problems.none()
                ? Optional.of(new TrialSet(
                        title.map(TextNode::text).orElse(shownAs),
                        shownAs,
                        brief,
                        responses,
                        trials,
                        problems.remarks()))
                : Optional.empty();
    }

    /** What was weighed, outside of any trial; empty when something was wrong. */
    public Optional<Weighed> weighed(Node node) {
        return new WeighedReader(names).read(node);
    }

    private void tellNoLevers(Response response) {
        problems.add(
                response.origin(),
                "Nothing says what \"" + response.name() + "\" may follow",
                "Expected \"levers\" beside \"responses\", such as {\"ether\": {\"kind\": \"cellulose-ether\"}}.");
    }

    private List<Trial> trials(Fields fields, List<Response> responses, List<Path> tables) {
        var written = new ArrayList<ObjectNode>();
        fields.get("trials")
                .flatMap(node -> expect.list(node, LIST))
                .map(ArrayNode::items)
                .orElse(List.of())
                .forEach(item -> expect.object(item, LIST).ifPresent(written::add));
        if (fields.get("tables").isEmpty() && tables.isEmpty()) {
            fields.required("trials", LIST);
        }
        var all = new TrialTables(problems).merged(written, fields.get("tables"), tables);
        var reader = new TrialReader(names, responses);
        var byId = new LinkedHashMap<String, Trial>();
        for (var each : all) {
            reader.read(each).ifPresent(trial -> {
                if (byId.putIfAbsent(trial.id(), trial) != null) {
                    problems.add(
                            trial.origin(),
                            "Two trials are called \"" + trial.id() + "\"",
                            "Expected a name of its own for each; \"repeats\" says that it repeats another.");
                }
            });
        }
        return byId.values().stream().map(trial -> grouped(trial, byId)).toList();
    }

    /** The trial with the first of those that repeat each other as its group. */
    private Trial grouped(Trial trial, Map<String, Trial> byId) {
        var first = trial;
        var seen = new ArrayList<String>();
        while (!first.group().isEmpty()) {
            var next = byId.get(first.group());
            if (next == null || seen.contains(first.id())) {
                tellNotRepeated(trial, first.group(), byId.keySet());
                break;
            }
            seen.add(first.id());
            first = next;
        }
        return new Trial(
                trial.id(),
                trial.weighed(),
                trial.process(),
                trial.measured(),
                first.id(),
                trial.date(),
                trial.block(),
                trial.origin());
    }

    private void tellNotRepeated(Trial trial, String repeated, Set<String> ids) {
        problems.unknown(
                trial.origin(),
                "\"" + trial.id() + "\" repeats \"" + repeated + "\", which is no other trial",
                repeated,
                ids,
                "Expected the id of an earlier trial.");
    }

    private void checkLevers(List<Response> responses, List<Trial> trials) {
        levers(responses).forEach(lever -> {
            var unknown = trials.stream()
                    .flatMap(trial -> lever.unknown(trial.weighed(), brief.composition()).stream())
                    .distinct()
                    .sorted()
                    .toList();
            if (unknown.isEmpty()) {
                trials.forEach(trial -> check(lever, trial));
            } else {
                tellUnknown(lever, unknown, lever.origin());
            }
        });
    }

    /** Tells what keeps a formula from being predicted. */
    public void checkFormula(List<Response> responses, Weighed weighed, Origin origin) {
        levers(responses).filter(lever -> !lever.measures().isEmpty()).forEach(lever -> {
            var unknown = lever.unknown(weighed, brief.composition());
            if (!unknown.isEmpty()) {
                tellUnknown(lever, unknown, origin);
            } else if (lever.value(weighed, Map.of(), brief.composition()).isEmpty()) {
                problems.add(
                        origin,
                        "The formula has nothing of what the lever \"" + lever.name() + "\" is measured against",
                        "Expected some of it to be weighed in.");
            }
        });
    }

    private static Stream<Lever> levers(List<Response> responses) {
        return responses.stream()
                .flatMap(response -> response.levers().stream())
                .distinct();
    }

    private void tellUnknown(Lever lever, Collection<String> ingredients, Origin origin) {
        problems.add(
                origin,
                "The lever \"" + lever.name() + "\" needs a value that nobody states of "
                        + String.join(", ", ingredients),
                "Expected it in the ingredient set, or under \"assume\" in the brief.");
    }

    private void check(Lever lever, Trial trial) {
        if (lever.value(trial.weighed(), trial.process(), brief.composition()).isEmpty()) {
            var expected = lever instanceof Lever.OfProcess process
                    ? "Expected it under \"process\", such as {\"" + process.setting() + "\": 30}."
                    : "Expected something weighed in of what it is measured against.";
            problems.add(
                    trial.origin(),
                    "\"" + trial.id() + "\" does not say what the lever \"" + lever.name() + "\" was",
                    expected);
        }
    }

    private void checkBlocks(List<Trial> trials) {
        if (trials.stream().anyMatch(trial -> !trial.block().isEmpty())) {
            trials.stream()
                    .filter(trial -> trial.block().isEmpty())
                    .forEach(trial -> problems.add(
                            trial.origin(),
                            "\"" + trial.id() + "\" states no block, and others do",
                            "Expected a block for each trial, such as \"day 2\", or for none."));
        }
    }
}
