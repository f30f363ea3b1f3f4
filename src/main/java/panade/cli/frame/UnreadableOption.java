package panade.cli.frame;

import picocli.CommandLine.TypeConversionException;

/** What was expected of an option whose words mean nothing; option and words are put before it when it is told. */
public final class UnreadableOption extends TypeConversionException {
    private static final long serialVersionUID = 1;

    public UnreadableOption(String expected) {
        super(expected);
    }
}
