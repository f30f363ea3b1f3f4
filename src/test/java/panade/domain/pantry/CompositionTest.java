package panade.domain.pantry;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.quantity.Decimal;

/** What "others": 0 and the definitions of components make of an ingredient; foods invented. */
class CompositionTest {
    @TempDir
    private Path folder;

    private Composition composition(String values, String more) throws IOException {
        Files.writeString(
                folder.resolve("set.json"),
                "{\"traits\": {\"bite\": {}}, \"ingredients\": [{\"id\": \"food\", \"values\": {" + values + "}" + more
                        + "}]}");
        Files.writeString(folder.resolve("prices.csv"), "ingredient,supplier,price,per\nfood,anyone,1,kg\n");
        Files.writeString(
                folder.resolve("brief.json"),
                "{\"ingredients\": \"set.json\", \"prices\": [\"prices.csv\"], \"batch\": \"1 kg\"}");
        var reading = Documents.readBrief(folder.resolve("brief.json"), Overrides.NONE);
        return ((Reading.Accepted<Brief>) reading).value().composition();
    }

    /** By hand: a syrup of 80 g total carbohydrate and 5 g fibre has 75 g available. */
    @ParameterizedTest(name = "{0}: {1} is {2}")
    @CsvSource(
            delimiter = ';',
            value = {
                "\"CHOCDF\": 80, \"SUGAR\": 6; CHOAVL; 80",
                "\"CHOCDF\": 80, \"FIBTG\": 5; CHOAVL; 75",
                "\"CHOAVL\": 75, \"FIBTG\": 5; CHOCDF; 80",
                "\"CHOCDF\": 80, \"CHOAVL\": 75; FIBTG; 5",
                "\"FIBTG\": 90; CHOCDF; 90",
                "\"CHOAVL\": 75; CHOCDF; 75",
                "\"FIBSOL\": 2, \"FIBINS\": 3; FIBTG; 5",
                "\"MET\": 300; AAS; 300",
                "\"PROCNT\": 20; FAT; 0",
                "\"NA\": 39000; PROCNT; 0",
                "\"WATER\": 100; ENERC; 0",
                "\"PROCNT\": 20; bite; 0",
            })
    void what_follows_from_stated_values_is_not_taken_as_none(String values, String of, String number)
            throws IOException {
        assertThat(composition(values, ", \"others\": 0").stated("food", of)).contains(Decimal.of(number));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = ';',
            value = {
                "\"SUGAR\": 6; CHOAVL",
                "\"SUGAR\": 6; CHOCDF",
                "\"FASAT\": 6; FAT",
                "\"FAT\": 100; ENERC",
                "\"NA\": 400; NACL",
                "\"NACL\": 400; NA",
                "\"LYS\": 400; PROCNT",
                "\"SUGAD\": 4; SUGAR",
                "\"PROCNT\": 4; DM",
            })
    void what_cannot_be_none_is_not_known(String values, String of) throws IOException {
        assertThat(composition(values, ", \"others\": 0").stated("food", of)).isEmpty();
    }

    /** By hand: of 10 g with 6 g fibre 4 g are left, and one for rounding. */
    @ParameterizedTest(name = "{0} is refused: {1}")
    @CsvSource(
            delimiter = ';',
            value = {
                "\"CHOCDF\": 5, \"SUGAR\": 6; true",
                "\"CHOCDF\": 10, \"FIBTG\": 6, \"SUGAR\": 5.1; true",
                "\"CHOCDF\": 10, \"FIBTG\": 6, \"SUGAR\": 5; false",
                "\"CHOCDF\": 6, \"SUGAR\": 6; false",
            })
    void more_sugar_than_carbohydrate_is_refused(String values, boolean refused) throws IOException {
        composition("", ", \"others\": 0");
        Files.writeString(
                folder.resolve("set.json"), "{\"ingredients\": [{\"id\": \"food\", \"values\": {" + values + "}}]}");
        assertThat(Documents.readBrief(folder.resolve("brief.json"), Overrides.NONE) instanceof Reading.Rejected)
                .isEqualTo(refused);
    }

    @Test
    void a_bound_on_what_cannot_be_none_says_why_others_is_not_enough() throws IOException {
        composition("\"FASAT\": 6", ", \"others\": 0");
        Files.writeString(
                folder.resolve("brief.json"),
                "{\"ingredients\": \"set.json\", \"prices\": [\"prices.csv\"], \"batch\": \"1 kg\", \"bounds\":"
                        + " [{\"property\": \"FAT\", \"min\": \"5 %\"}, {\"property\": \"ENERC\", \"max\": \"300 kcal/100g\"}]}");
        var rejected = (Reading.Rejected<Brief>) Documents.readBrief(folder.resolve("brief.json"), Overrides.NONE);
        assertThat(rejected.problems())
                .hasSize(2)
                .allMatch(problem -> problem.text().contains("\"others\": 0 does not"));
        assertThat(rejected.problems().get(1).text()).contains("ENERC of \"food\"", "\"sum\"");
    }

    /** Without "others" nothing is none, but what is stated still adds up. */
    @Test
    void a_definition_holds_without_others_as_well() throws IOException {
        assertThat(composition("\"CHOCDF\": 80, \"FIBTG\": 5", "").stated("food", "CHOAVL"))
                .contains(Decimal.of("75"));
        assertThat(composition("\"CHOCDF\": 80", "").stated("food", "CHOAVL")).isEmpty();
        assertThat(composition("\"MET\": 300", "").stated("food", "AAS")).isEmpty();
    }
}
