package panade.cli.open;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.page.open.OpenPage;
import panade.plan.Planner;
import panade.serve.Pages;
import panade.serve.Reply;
import panade.whatif.Changes;
import panade.whatif.SavedBrief.Saved;

/**
 * Answers the page. Nothing is kept of what anybody changes: each question says all of it, so tabs do not disturb each
 * other, and going back is asking again.
 */
final class OpenPages implements Pages {
    private final Planner planner;
    private final Path file;
    private final Overrides overrides;
    private final AtomicReference<@Nullable Opening> opened = new AtomicReference<>();

    OpenPages(Planner planner, Path file, Overrides overrides) {
        this.planner = planner;
        this.file = file;
        this.overrides = overrides;
    }

    @Override
    public Reply get(String path) {
        return switch (path) {
            case "" -> Reply.html(page());
            case "open.css" -> Reply.of("text/css", OpenPage.style());
            case "open.js" -> Reply.of("text/javascript", OpenPage.script());
            default -> Reply.notFound();
        };
    }

    private String page() {
        var known = opened.get();
        if (known != null && known.version().isCurrent()) {
            return known.page();
        }
        var reading = Opening.read(planner, file, overrides);
        if (reading instanceof Reading.Rejected<Opening> rejected) {
            return OpenPage.of(rejected.problems());
        }
        var fresh = ((Reading.Accepted<Opening>) reading).value();
        opened.set(fresh);
        return fresh.page();
    }

    @Override
    public Reply post(String path, Map<String, String> form) {
        var known = opened.get();
        boolean same = known != null
                && known.version().text().equals(form.get("version"))
                && known.version().isCurrent();
        return known == null || !same
                ? Reply.outdated("Expected the page of the documents as they are now.")
                : answer(known, path, form);
    }

    private static Reply answer(Opening known, String path, Map<String, String> form) {
        var changes = known.controls().changes(form);
        return switch (path) {
            case "answer" -> Reply.html(known.page(changes));
            case "save" -> saved(known, changes, form);
            default -> Reply.notFound();
        };
    }

    private static Reply saved(Opening known, Changes changes, Map<String, String> form) {
        var saved = known.saver().write(changes, form.getOrDefault("name", ""), form.containsKey("over"));
        if (saved instanceof Saved.Refused refused) {
            return Reply.refused(refused.why());
        }
        return saved instanceof Saved.Occupied occupied
                ? Reply.doubted(named(occupied.files()) + (occupied.files().size() == 1 ? " is" : " are")
                        + " there already. Save again to write over that.")
                : Reply.said("Saved as " + named(((Saved.Written) saved).files()) + ".");
    }

    private static String named(List<Path> files) {
        return files.stream().map(Path::toString).collect(Collectors.joining(" with "));
    }
}
