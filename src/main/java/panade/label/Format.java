package panade.label;

/** Whose rules a label follows. */
public enum Format {
    /** 21 CFR 101.9. */
    US,
    /** Regulation (EU) 1169/2011. */
    EU
}
