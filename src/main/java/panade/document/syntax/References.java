package panade.document.syntax;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import panade.document.syntax.Node.TextNode;

/** Finds the files a document refers to, from the folder of the file that names them. */
public record References(Problems problems) {

    /** The file that a text names, as the user would type it; told when it is not there. */
    public Optional<Path> file(TextNode node) {
        var path = path(node);
        if (path.isEmpty()) {
            problems.add(node.origin(), "No file can be called so", "Expected a path relative to this file.");
            return path;
        }
        if (Files.isDirectory(path.get())) {
            problems.add(node.origin(), "\"" + path.get() + "\" is a folder", "Expected the path of a file.");
            return Optional.empty();
        }
        if (!Files.isReadable(path.get())) {
            var what = "The file \"" + path.get() + "\" is not there or cannot be read";
            problems.add(node.origin(), what, expected(node));
            return Optional.empty();
        }
        return path;
    }

    private static String expected(TextNode node) {
        boolean typed = node.origin().line() == 0; // on the command line
        return typed
                ? "Expected the path of a file, from the folder you are in."
                : "Expected a path relative to the folder of " + node.origin().file() + ".";
    }

    private static Optional<Path> path(TextNode node) {
        try {
            var base = Path.of(node.origin().file());
            return Optional.of(base.resolveSibling(node.text()).normalize());
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
