package panade.document.pantry;

import java.util.LinkedHashMap;
import java.util.Map;
import panade.domain.pantry.Property;
import panade.quantity.Unit;

/**
 * The food components that every ingredient set knows: FAO/INFOODS tagnames, each with its unit per 100 g of edible
 * portion. Energy is in kcal here, where INFOODS leaves the choice to whoever states it.
 */
final class Tagnames {
    private static final String TABLE = """
            ENERC kcal/100g energy
            WATER g/100g water
            DM g/100g dry matter
            PROCNT g/100g protein, total
            NT g/100g nitrogen, total
            FAT g/100g fat, total
            FATCE g/100g fat, total, by continuous extraction
            FASAT g/100g fatty acids, total saturated
            FAMS g/100g fatty acids, total monounsaturated
            FAPU g/100g fatty acids, total polyunsaturated
            FATRN g/100g fatty acids, total trans
            FACN3 g/100g fatty acids, total, cis n-3
            FACN6 g/100g fatty acids, total, cis n-6
            F18D2 g/100g fatty acid 18:2
            F18D3 g/100g fatty acid 18:3
            CHOLE mg/100g cholesterol
            CHOCDF g/100g carbohydrate, total, by difference
            CHOCSM g/100g carbohydrate, total, by summation
            CHOAVL g/100g carbohydrate, available
            CHOAVLDF g/100g carbohydrate, available, by difference
            FIBTG g/100g fibre, total dietary
            FIBSOL g/100g fibre, water-soluble
            FIBINS g/100g fibre, water-insoluble
            SUGAR g/100g sugars, total
            SUGAD g/100g sugar, added
            STARCH g/100g starch, total
            STARES g/100g starch, resistant
            GLUS g/100g glucose
            FRUS g/100g fructose
            SUCS g/100g sucrose
            LACS g/100g lactose
            MALS g/100g maltose
            POLYL mg/100g polyols, total
            ASH g/100g ash
            ALC g/100g alcohol
            OA g/100g organic acids, total
            ACEAC mg/100g acetic acid
            NA mg/100g sodium
            NACL mg/100g salt
            K mg/100g potassium
            CA mg/100g calcium
            FE mg/100g iron, total
            P mg/100g phosphorus
            MG mg/100g magnesium
            ZN mg/100g zinc
            CU mg/100g copper
            MN \u00b5g/100g manganese
            SE \u00b5g/100g selenium, total
            ID \u00b5g/100g iodide
            CLD mg/100g chloride
            VITD \u00b5g/100g vitamin D
            ERGCAL \u00b5g/100g ergocalciferol
            CHOCAL \u00b5g/100g cholecalciferol
            VITA \u00b5g/100g vitamin A
            VITC mg/100g vitamin C
            THIA mg/100g thiamin
            RIBF mg/100g riboflavin
            NIA mg/100g niacin, preformed
            NIAEQ mg/100g niacin equivalents, total
            PANTAC mg/100g pantothenic acid
            VITB6A mg/100g vitamin B-6, total
            FOL \u00b5g/100g folate, total
            FOLDFE \u00b5g/100g folate, dietary folate equivalents
            FOLAC \u00b5g/100g folic acid, synthetic folic acid
            VITB12 \u00b5g/100g vitamin B-12
            BIOT \u00b5g/100g biotin
            VITE mg/100g vitamin E
            VITK \u00b5g/100g vitamin K
            CHOLN mg/100g choline, total
            HIS mg/100g histidine
            ILE mg/100g isoleucine
            LEU mg/100g leucine
            LYS mg/100g lysine
            MET mg/100g methionine
            CYS mg/100g cystine
            PHE mg/100g phenylalanine
            TYR mg/100g tyrosine
            THR mg/100g threonine
            TRP mg/100g tryptophan
            VAL mg/100g valine
            ARG mg/100g arginine
            AAS mg/100g amino acids, total sulphur-containing
            AAA mg/100g amino acids, total aromatic
            PHYTAC mg/100g phytic acid
            OXALAC mg/100g oxalic acid
            """;

    private static final Map<String, Property> PROPERTIES = properties();

    private Tagnames() {}

    /** All components by tagname, in the order of the table. */
    static Map<String, Property> all() {
        return new LinkedHashMap<>(PROPERTIES);
    }

    static boolean contains(String name) {
        return PROPERTIES.containsKey(name);
    }

    private static Map<String, Property> properties() {
        var properties = new LinkedHashMap<String, Property>();
        TABLE.lines().map(Tagnames::property).forEach(property -> properties.put(property.id(), property));
        return properties;
    }

    private static Property property(String row) {
        var cells = row.split(" ", 3);
        return new Property(cells[0], cells[2], Unit.of(cells[1]), true, null, Map.of());
    }
}
