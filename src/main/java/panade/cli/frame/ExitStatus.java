package panade.cli.frame;

import panade.bench.BatchSheet;
import panade.plan.Outcome;

/** What the process tells its caller. */
public final class ExitStatus {
    public static final int DONE = 0;
    public static final int USAGE = 2;
    public static final int DOCUMENT = 3;
    public static final int NO_BLEND = 4;
    public static final int OUR_FAULT = 5;
    public static final int UNDECIDED = 6;

    private ExitStatus() {}

    /** The status of an answer with or without a blend. */
    public static int of(Outcome outcome) {
        return outcome.fold(found -> DONE, none -> NO_BLEND, open -> UNDECIDED);
    }

    /** The status of weights: where the search for them ended early, that none were found says nothing. */
    public static int of(BatchSheet sheet) {
        if (sheet.isMet()) {
            return DONE;
        }
        return sheet.endedEarly() ? UNDECIDED : NO_BLEND;
    }
}
