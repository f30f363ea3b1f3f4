package panade.cli.frame;

import java.io.PrintWriter;
import panade.plan.Engines;
import panade.plan.Planner;

/**
 * Where a command prints and who solves for it.
 *
 * @param out for the answer
 * @param err for messages
 */
public record Console(PrintWriter out, PrintWriter err, Engines engines) {
    /** A planner with the usual settings. */
    public Planner planner() {
        return new Planner(engines);
    }
}
