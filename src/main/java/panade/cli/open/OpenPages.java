package panade.cli.open;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.page.open.OpenPage;
import panade.plan.Planner;
import panade.serve.Pages;
import panade.serve.Reply;

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
        if (!path.equals("answer")) {
            return Reply.notFound();
        }
        var known = opened.get();
        return known != null
                        && known.version().text().equals(form.get("version"))
                        && known.version().isCurrent()
                ? Reply.html(known.page(known.controls().changes(form)))
                : Reply.outdated("Expected the page of the documents as they are now.");
    }
}
