package panade.cli;

import java.util.Objects;
import picocli.CommandLine.IVersionProvider;

/** Tells the version the build wrote into the jar. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        return new String[] {"panade " + number()};
    }

    /** The number alone. */
    static String number() {
        var version = Main.class.getPackage().getImplementationVersion();
        return Objects.requireNonNullElse(version, "(not packaged)");
    }
}
