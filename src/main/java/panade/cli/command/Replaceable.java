package panade.cli.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What a file that is already there must be so that it may be written over. A name typed wrongly must not cost anybody
 * a brief or a price list.
 *
 * @param what what it is, with its article
 * @param beginning what every such file begins with
 */
public record Replaceable(String what, String beginning) {
    /** A page that {@code report} or {@code manual} wrote. */
    public static final Replaceable PAGE = new Replaceable("a page", "<!DOCTYPE html>");

    /** A model in the LP format, which begins with a comment. */
    static final Replaceable LP = new Replaceable("a model in that format", "\\ ");

    /** A model in the MPS format, which begins with a comment. */
    static final Replaceable MPS = new Replaceable("a model in that format", "* ");

    /** Whether writing there loses something else; an empty file is nothing. */
    boolean wouldBeLost(Path file) {
        if (!Files.isRegularFile(file)) {
            return false;
        }
        try (var bytes = Files.newInputStream(file)) {
            var start = new String(bytes.readNBytes(beginning.length()), StandardCharsets.US_ASCII);
            return !start.isEmpty() && !start.equals(beginning);
        } catch (IOException unreadable) {
            return true;
        }
    }

    /** Why a new one may not be written there, if it may not: no folder, a folder, or something else that would go. */
    public Optional<String> objection(Path file) {
        if (Files.isDirectory(file)) {
            return Optional.of(file + " is a folder: expected a file in it.");
        }
        var folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            return Optional.of(file + ": there is no folder " + folder + ".");
        }
        return wouldBeLost(file) ? Optional.of(refusal(file)) : Optional.empty();
    }

    /** What to tell then. */
    String refusal(Path file) {
        return file + " is already there and is not " + what + ": choose another name.";
    }
}
