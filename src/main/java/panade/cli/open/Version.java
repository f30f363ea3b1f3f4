package panade.cli.open;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import panade.domain.Brief;
import panade.domain.pantry.Ingredient;
import panade.whatif.ChangedBrief;

/**
 * When the documents of a brief were written last, so that what is typed is never put into others than were read.
 *
 * @param written size and time by file
 */
record Version(Map<String, String> written) {
    static Version of(Brief brief) {
        return new Version(
                files(brief).distinct().collect(TreeMap::new, (map, file) -> map.put(file, at(file)), Map::putAll));
    }

    private static Stream<String> files(Brief brief) {
        return Stream.of(
                        Stream.of(brief.file()),
                        brief.bounds().stream().map(bound -> bound.origin().file()),
                        brief.set().ingredients().values().stream()
                                .map((Ingredient each) -> each.origin().file()),
                        ChangedBrief.offers(brief).stream()
                                .map(offer -> offer.origin().file()))
                .flatMap(each -> each);
    }

    private static String at(String file) {
        try {
            var path = Path.of(file);
            return Files.size(path) + " bytes, " + Files.getLastModifiedTime(path);
        } catch (IOException gone) {
            return "not there";
        }
    }

    /** Whether the documents are still as they were. */
    boolean isCurrent() {
        return written.entrySet().stream().allMatch(each -> at(each.getKey()).equals(each.getValue()));
    }

    /** A word that differs where the documents do. */
    String text() {
        return Integer.toHexString(written.hashCode());
    }
}
