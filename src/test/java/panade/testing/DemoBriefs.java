package panade.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;

/** The demo's briefs, read as a user's would be. */
public final class DemoBriefs {
    public static final List<String> NAMES = List.of("dumpling-filling", "skewer-mince", "taco-crumble");

    private DemoBriefs() {}

    public static Brief read(String name, String... months) {
        var lists = List.of(months).stream()
                .map(month -> Path.of("ingredient-sets", "netherpleat", "prices-" + month + ".csv"))
                .toList();
        var reading = Documents.readBrief(
                Path.of("constraints", name + ".json"), new Overrides(lists, null, List.of(), null));
        assertThat(reading).isInstanceOf(Reading.Accepted.class);
        return ((Reading.Accepted<Brief>) reading).value();
    }
}
