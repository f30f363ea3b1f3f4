package panade.cli.frame;

/** A command that may run long enough to be worth the better compiler; the launcher's list of them is made of these. */
public interface LongRunning {}
