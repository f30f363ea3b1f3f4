package panade.cli;

import java.util.Objects;
import picocli.CommandLine.IVersionProvider;

/** Tells the version the build wrote into the jar. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        var version = Main.class.getPackage().getImplementationVersion();
        return new String[] {"panade " + Objects.requireNonNullElse(version, "(not packaged)")};
    }
}
