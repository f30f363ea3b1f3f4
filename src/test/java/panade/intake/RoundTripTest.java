package panade.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.document.Documents;
import panade.document.syntax.Reading;
import panade.domain.origin.Origin;
import panade.domain.pantry.Ingredient;
import panade.domain.pantry.IngredientSet;
import panade.domain.purchase.Offer;
import panade.domain.purchase.OfferId;
import panade.intake.Request.Differing;
import panade.intake.table.Columns;
import panade.sheet.Book;
import panade.sheet.poi.PoiSpreadsheets;
import panade.workbook.PantrySheets;

/** What goes into a workbook and comes back is the same pantry, number by number. */
class RoundTripTest {
    private static final Origin NOWHERE = new Origin("", 0, 0, "");

    @TempDir
    Path folder;

    @Test
    void the_demo_s_pantry_and_prices_come_back_as_they_were() throws IOException {
        var set = set(Files.readString(Path.of("ingredient-sets/netherpleat/ingredients.json")));
        for (var month : List.of("september", "december")) {
            var list = Files.readString(Path.of("ingredient-sets/netherpleat/prices-" + month + ".csv"));
            assertComesBack(set, accepted(Documents.pricesOf(list, "", set)), folder.resolve(month));
        }
    }

    /** Invented: every sort of thing that a cell could spoil. */
    @Test
    void awkward_words_and_numbers_come_back_as_they_were() throws IOException {
        var set = set("""
                {
                  "title": "=odd", "source": "one; two",
                  "assume": {"LYS": 0.1},
                  "traits": {
                    "-chew": {"title": "chew; or not", "absent": -0.30000000000000004},
                    "soak (cold)": {"unit": "g/g"},
                    "pH drop": {"unit": "pH"},
                    "FAT": {"title": "grease"},
                    "ENERC": {"sum": {"PROCNT": 4, "FAT": 8.99999999999999999, "soak (cold)": -1}}
                  },
                  "ingredients": [
                    {"id": "=1+1", "name": "'quoted", "kinds": ["none"], "values": {"FAT": 0.1, "PROCNT": 0.07}},
                    {"id": "none", "label": "@home", "kinds": ["a;b", "back\\\\slash", "plain"], "allergens": [],
                     "values": {"FAT": 0.123456789012345678901234567890, "-chew": -3, "soak (cold)": 1e-12},
                     "others": 0, "spread": {"FAT": 0.01}, "note": "1.0",
                     "madeOf": ["wheat flour", "salt"], "energyFactors": {"PROCNT": 3.47, "FAT": 8.37},
                     "digestibility": {"PROCNT": "91.5 %", "LYS": "90 %"}},
                    {"id": "lot 2", "variantOf": "none", "allergens": ["none", "soy"], "maxUse": "35%", "usable": "87.5 %",
                     "values": {"pH drop": 0.5}}
                  ]
                }
                """);
        var prices = accepted(Documents.pricesOf("""
                ingredient,supplier,price,per,pack,minimum,available,currency,note
                =1+1,-me,10,3 kg,7 lb,,0 kg,USD,"a, ""b"" c"
                none,+you,0.333333333333333333333,oz,,1 kg,,USD,
                none,+you,0,t,5 kg,,,USD,again
                """, "", set));
        assertComesBack(set, prices, folder.resolve("odd"));
    }

    private void assertComesBack(IngredientSet set, List<Offer> offers, Path into) throws IOException {
        var book = new Book(
                List.of(PantrySheets.ingredients(set), PantrySheets.traits(set), PantrySheets.prices(offers, "USD")));
        var spreadsheets = new PoiSpreadsheets();
        var file = Files.write(folder.resolve("pantry.xlsx"), spreadsheets.write(book));
        var request =
                new Request(file, into, Columns.OURS, null, List.of(), List.of(), Map.of(), "back", Differing.REFUSED);
        var intake = accepted(Importing.of(request, spreadsheets));
        var text = new HashMap<String, String>();
        intake.files().forEach(each -> text.put(each.file().getFileName().toString(), each.text()));
        var back = set(text.getOrDefault("ingredients.json", ""));
        assertThat(plain(back)).isEqualTo(plain(set));
        assertThat(back.properties()).isEqualTo(set.properties());
        assertThat(back.assume()).isEqualTo(set.assume());
        assertThat(back.title()).isEqualTo(set.title());
        assertThat(back.source()).isEqualTo(set.source());
        var prices = accepted(Documents.pricesOf(text.getOrDefault("prices-back.csv", ""), "", set));
        assertThat(prices.stream().map(RoundTripTest::plain).toList())
                .isEqualTo(offers.stream().map(RoundTripTest::plain).toList());
    }

    private static Map<String, Ingredient> plain(IngredientSet set) {
        var plain = new LinkedHashMap<String, Ingredient>();
        set.ingredients()
                .values()
                .forEach(each -> plain.put(
                        each.id(),
                        new Ingredient(
                                each.id(),
                                each.name(),
                                each.label(),
                                each.kinds(),
                                each.values(),
                                each.othersAreZero(),
                                each.spread(),
                                each.allergens(),
                                each.maxUse(),
                                each.usable(),
                                each.variantOf(),
                                each.note(),
                                each.labelling(),
                                NOWHERE)));
        return plain;
    }

    private static Offer plain(Offer offer) {
        return new Offer(
                OfferId.unlisted(offer.ingredient()),
                offer.ingredient(),
                offer.supplier(),
                offer.pricePerKg(),
                offer.pack(),
                offer.minimum(),
                offer.available(),
                offer.note(),
                NOWHERE);
    }

    private static IngredientSet set(String text) {
        return accepted(Documents.setOf(text, "set"));
    }

    private static <T> T accepted(Reading<T> reading) {
        if (reading instanceof Reading.Rejected<T> rejected) {
            throw new AssertionError(rejected.problems().toString());
        }
        return ((Reading.Accepted<T>) reading).value();
    }
}
