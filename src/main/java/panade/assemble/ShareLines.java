package panade.assemble;

import java.util.List;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.result.ShareLine;

/** Makes the lines of a blend of which only the shares matter. */
final class ShareLines {
    private ShareLines() {}

    static List<ShareLine> of(Brief brief, Blend blend) {
        return blend.lines().stream()
                .map(line -> new ShareLine(
                        line.use().ingredient(),
                        line.use().stage(),
                        line.offer().supplier(),
                        line.share(),
                        brief.set().ingredient(line.use().ingredient()).name()))
                .toList();
    }
}
