package panade.domain.pantry;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Components that follow from others by their definition: available carbohydrate is the total less fibre, total
 * sulphur-containing amino acids are methionine and cystine (FAO/INFOODS Guidelines for Checking Food Composition Data,
 * 2012, and the tagnames' own definitions; from memory).
 *
 * @param component what follows
 * @param whole what the parts are taken from; empty when it is their sum
 * @param parts added up, or taken from the whole
 */
record Derivation(String component, Optional<String> whole, List<String> parts) {
    private static final BigFraction MINUS_ONE = BigFraction.of(-1);

    private static final List<Derivation> ALL = List.of(
            difference("CHOAVL", "CHOCDF", "FIBTG"),
            difference("FIBTG", "CHOCDF", "CHOAVL"),
            sum("CHOCDF", "CHOAVL", "FIBTG"),
            sum("FIBTG", "FIBSOL", "FIBINS"),
            sum("VITD", "ERGCAL", "CHOCAL"),
            sum("AAS", "MET", "CYS"),
            sum("AAA", "PHE", "TYR"));

    /**
     * What cannot be nothing where one of these is stated above zero: a whole with a part, or the same told otherwise.
     */
    private static final Map<String, Set<String>> EVIDENCE = evidence("""
            CHOAVL: SUGAR SUGAD STARCH GLUS FRUS SUCS LACS MALS CHOCSM CHOAVLDF
            CHOCDF: SUGAR SUGAD STARCH GLUS FRUS SUCS LACS MALS CHOCSM CHOAVLDF STARES FIBSOL FIBINS
            CHOCSM: SUGAR SUGAD STARCH GLUS FRUS SUCS LACS MALS CHOAVL CHOCDF CHOAVLDF
            CHOAVLDF: SUGAR SUGAD STARCH GLUS FRUS SUCS LACS MALS CHOAVL CHOCDF CHOCSM
            FIBTG: FIBSOL FIBINS
            SUGAR: SUGAD GLUS FRUS SUCS LACS MALS
            FAT: FATCE FASAT FAMS FAPU FATRN FACN3 FACN6 F18D2 F18D3
            FATCE: FAT FASAT FAMS FAPU FATRN FACN3 FACN6 F18D2 F18D3
            FAPU: F18D2 F18D3
            PROCNT: NT HIS ILE LEU LYS MET CYS PHE TYR THR TRP VAL ARG AAS AAA
            NT: PROCNT HIS ILE LEU LYS MET CYS PHE TYR THR TRP VAL ARG AAS AAA
            AAS: MET CYS
            AAA: PHE TYR
            NA: NACL
            NACL: NA
            VITD: ERGCAL CHOCAL
            NIAEQ: NIA
            FOLDFE: FOL FOLAC
            FOL: FOLAC
            ASH: NA NACL
            DM: PROCNT FAT CHOCDF CHOAVL FIBTG ASH SUGAR STARCH NACL
            ENERC: PROCNT NT FAT FATCE FASAT FAMS FAPU CHOCDF CHOCSM CHOAVL CHOAVLDF FIBTG SUGAR STARCH ALC OA POLYL
            """);

    private static Map<String, Set<String>> evidence(String table) {
        var evidence = new HashMap<String, Set<String>>();
        table.lines().forEach(line -> {
            var sides = line.split(": ", 2);
            evidence.put(sides[0], Set.of(sides[1].strip().split(" ", -1)));
        });
        return Map.copyOf(evidence);
    }

    private static Derivation sum(String component, String... parts) {
        return new Derivation(component, Optional.empty(), List.of(parts));
    }

    private static Derivation difference(String component, String whole, String part) {
        return new Derivation(component, Optional.of(whole), List.of(part));
    }

    /** Those of a component, the first that can be worked out counts. */
    static List<Derivation> of(String component) {
        return ALL.stream().filter(each -> each.component.equals(component)).toList();
    }

    /** Whether a component that an ingredient leaves out cannot be nothing, because of what it does state. */
    static boolean isContradicted(String component, Map<String, BigFraction> stated) {
        return EVIDENCE.getOrDefault(component, Set.of()).stream()
                .map(stated::get)
                .anyMatch(value -> value != null && value.signum() > 0);
    }

    /**
     * Weights of the parts it is made of, none when more is taken away than there is, which is a matter of rounding;
     * empty when it cannot be worked out.
     *
     * @param stated what the ingredient itself states
     * @param known a component's number as stated, assumed or taken as none
     */
    Optional<Map<String, BigFraction>> terms(
            Map<String, BigFraction> stated, Function<String, Optional<BigFraction>> known) {
        boolean begins = whole.map(stated::containsKey).orElse(parts.stream().anyMatch(stated::containsKey));
        if (!begins || parts.stream().anyMatch(part -> known.apply(part).isEmpty())) {
            return Optional.empty();
        }
        var terms = new HashMap<String, BigFraction>();
        parts.forEach(part -> terms.put(part, whole.isEmpty() ? BigFraction.ONE : MINUS_ONE));
        whole.ifPresent(name -> terms.put(name, BigFraction.ONE));
        return Optional.of(value(terms, known).signum() < 0 ? Map.of() : terms);
    }

    /** The number that terms come to. */
    static BigFraction value(Map<String, BigFraction> terms, Function<String, Optional<BigFraction>> known) {
        return terms.entrySet().stream()
                .map(term -> known.apply(term.getKey()).orElseThrow().multiply(term.getValue()))
                .reduce(BigFraction.ZERO, BigFraction::add);
    }
}
