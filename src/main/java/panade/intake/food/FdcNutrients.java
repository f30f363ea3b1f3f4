package panade.intake.food;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Nutrient numbers of USDA FoodData Central and what they are as INFOODS tagnames. Numbers and tagnames are those of
 * the USDA National Nutrient Database for Standard Reference, release 28 (file NUTR_DEF), which FoodData Central goes
 * on with; 202, 269.3, 539, 957 and 958 are in its own list of nutrients only. Histidine is HIS there as in INFOODS
 * 2010. Where several numbers give one component the first of a row wins: energy as stated, then by specific and by
 * general Atwater factors (958, 957); sugars (269), then their sum as Foundation Foods have it (269.3).
 *
 * <p>Left out on purpose, because they are not what the tagname means: vitamin A as RAE (320, VITA counts retinol
 * equivalents), vitamin E as alpha-tocopherol alone (323), vitamin K as phylloquinone alone (430), anything in
 * international units, and energy in kJ.
 */
final class FdcNutrients {
    private static final String TABLE = """
            208 958 957 ENERC
            255 WATER
            203 PROCNT
            202 NT
            204 FAT
            606 FASAT
            645 FAMS
            646 FAPU
            605 FATRN
            618 F18D2
            619 F18D3
            601 CHOLE
            205 CHOCDF
            291 FIBTG
            269 269.3 SUGAR
            539 SUGAD
            209 STARCH
            211 GLUS
            212 FRUS
            210 SUCS
            213 LACS
            214 MALS
            207 ASH
            221 ALC
            307 NA
            306 K
            301 CA
            303 FE
            305 P
            304 MG
            309 ZN
            312 CU
            315 MN
            317 SE
            328 VITD
            325 ERGCAL
            326 CHOCAL
            401 VITC
            404 THIA
            405 RIBF
            406 NIA
            410 PANTAC
            415 VITB6A
            417 FOL
            435 FOLDFE
            431 FOLAC
            418 VITB12
            421 CHOLN
            512 HIS
            503 ILE
            504 LEU
            505 LYS
            506 MET
            507 CYS
            508 PHE
            509 TYR
            502 THR
            501 TRP
            510 VAL
            511 ARG
            """;

    private static final Map<String, Nutrient> BY_NUMBER = byNumber();

    private FdcNutrients() {}

    /**
     * A nutrient.
     *
     * @param rank from 0; of several numbers for one component the lowest is taken
     */
    record Nutrient(String tagname, int rank) {}

    /** What a number stands for; empty when there is no such component here. */
    static Optional<Nutrient> find(String number) {
        return Optional.ofNullable(BY_NUMBER.get(number));
    }

    private static Map<String, Nutrient> byNumber() {
        var found = new HashMap<String, Nutrient>();
        TABLE.lines().map(line -> line.split(" ")).forEach(words -> {
            int last = words.length - 1;
            for (int i = 0; i < last; i++) {
                found.put(words[i], new Nutrient(words[last], i));
            }
        });
        return found;
    }
}
