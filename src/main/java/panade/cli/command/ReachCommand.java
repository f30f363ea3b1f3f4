package panade.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import panade.assemble.ReachResults;
import panade.cli.frame.BriefCommand;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.LongRunning;
import panade.cli.frame.Version;
import panade.document.syntax.Problem;
import panade.domain.Brief;
import panade.domain.origin.Origin;
import panade.domain.pantry.PropertyWords;
import panade.plan.Outcome.Blended;
import panade.reach.Reaching;
import panade.reach.ShelfTarget;
import panade.reach.Target;
import panade.report.question.ReachReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Finds out whether a price can be reached. */
@Command(
        name = "reach",
        description = "Can I hit my price per pound, and if not, what must give, and by how little?",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade reach constraints/dumpling-filling.json --target 1.20/lb"})
public final class ReachCommand extends BriefCommand implements LongRunning {
    @Option(
            names = "--property",
            paramLabel = "NAME",
            description =
                    "Tell least and most of this when money is to spare; repeatable. All that bounds name unless given.")
    private final List<String> properties = new ArrayList<>();

    public ReachCommand(Console console) {
        super(console);
    }

    @Override
    protected boolean knowsCooked() {
        return false;
    }

    @Override
    protected int answer(Brief brief) {
        properties.replaceAll(name -> brief.set().properties().containsKey(name)
                ? name
                : PropertyWords.tagname(name).orElse(name));
        var unknown = properties.stream()
                .filter(name -> !brief.set().properties().containsKey(name))
                .map(name -> Problem.unknown(
                        new Origin("--property", 0, 0, ""),
                        "No property is called \"" + name + "\"",
                        name,
                        brief.set().properties().keySet(),
                        "Expected a tagname or a trait of the ingredient set."))
                .toList();
        if (!unknown.isEmpty()) {
            return refuse(unknown);
        }
        var best = planner().answer(brief);
        return best instanceof Blended blended ? print(study(blended)) : explain(brief);
    }

    private Target study(Blended best) {
        var stated = best.brief().target();
        if (stated != null) {
            return Reaching.of(planner(), best, stated.perKg(), null);
        }
        var shelf = best.brief().practice().shelf();
        if (shelf == null) {
            throw usage("No target: say --target 3.90/lb, or put \"target\" or \"shelf\" into the brief.");
        }
        var worked = ShelfTarget.of(best.brief(), shelf);
        return Reaching.of(planner(), best, worked.perKg(), worked);
    }

    private int print(Target target) {
        var result = ReachResults.of(target, named(target.best().brief()));
        print(result, () -> ReachReport.of(result));
        return ExitStatus.DONE;
    }

    private Set<String> named(Brief brief) {
        var named = new TreeSet<>(properties);
        if (named.isEmpty()) {
            brief.bounds()
                    .forEach(bound -> bound.of()
                            .parts()
                            .forEach(part -> named.addAll(part.properties().keySet())));
        }
        return named;
    }
}
