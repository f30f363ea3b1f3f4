package panade.cli.frame;

import java.util.Objects;
import picocli.CommandLine.IVersionProvider;

/** Tells the version the build wrote into the jar. */
public final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        return new String[] {"panade " + number()};
    }

    /** The number alone. */
    public static String number() {
        var version = Version.class.getPackage().getImplementationVersion();
        return Objects.requireNonNullElse(version, "(not packaged)");
    }
}
