package panade.cli;

/** What the process tells its caller. */
final class ExitStatus {
    static final int DONE = 0;
    static final int USAGE = 2;
    static final int DOCUMENT = 3;
    static final int NO_BLEND = 4;
    static final int OUR_FAULT = 5;

    private ExitStatus() {}
}
