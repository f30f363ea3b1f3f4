package panade.model;

/** Something could not be proved either way, so that what depends on it is undecided. It is no fault of the program. */
public final class Unproved extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /**
     * What ends the work.
     *
     * @param reason a clause without a full stop
     */
    public Unproved(String reason) {
        super(reason, null, false, false);
    }

    /** Why nothing could be proved. */
    public String reason() {
        return String.valueOf(getMessage());
    }
}
