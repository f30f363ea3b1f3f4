package panade.cli;

import panade.bench.BatchSheet;
import panade.plan.Outcome;

/** What the process tells its caller. */
final class ExitStatus {
    static final int DONE = 0;
    static final int USAGE = 2;
    static final int DOCUMENT = 3;
    static final int NO_BLEND = 4;
    static final int OUR_FAULT = 5;
    static final int UNDECIDED = 6;

    private ExitStatus() {}

    /** The status of an answer with or without a blend. */
    static int of(Outcome outcome) {
        return outcome.fold(found -> DONE, none -> NO_BLEND, open -> UNDECIDED);
    }

    /** The status of weights: where the search for them ended early, that none were found says nothing. */
    static int of(BatchSheet sheet) {
        if (sheet.isMet()) {
            return DONE;
        }
        return sheet.endedEarly() ? UNDECIDED : NO_BLEND;
    }
}
