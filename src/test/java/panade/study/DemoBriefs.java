package panade.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import panade.document.Documents;
import panade.document.Overrides;
import panade.document.Reading;
import panade.domain.Brief;

/** The demo's briefs, read as a user's would be. */
final class DemoBriefs {
    static final List<String> NAMES = List.of("dumpling-filling", "skewer-mince", "taco-crumble");

    private DemoBriefs() {}

    static Brief read(String name, String... months) {
        var lists = List.of(months).stream()
                .map(month -> Path.of("ingredient-sets", "netherpleat", "prices-" + month + ".csv"))
                .toList();
        var reading = Documents.readBrief(
                Path.of("constraints", name + ".json"), new Overrides(lists, null, List.of(), null));
        assertThat(reading).isInstanceOf(Reading.Accepted.class);
        return ((Reading.Accepted<Brief>) reading).value();
    }
}
