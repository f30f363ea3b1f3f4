package panade.workbook;

import java.util.List;
import panade.result.PanelResult;
import panade.result.PanelResult.Carried;
import panade.result.PanelResult.Sourced;
import panade.sheet.Cell;
import panade.sheet.Cell.Form;
import panade.sheet.Sheet;
import panade.sheet.SheetDraft;

/** What a label says in words. */
final class LabelSheets {
    private LabelSheets() {}

    /** The ingredient statement, and the weights that its order comes from. */
    static Sheet statement(PanelResult panel) {
        var sheet = new SheetDraft("Statement", 90, 18);
        sheet.title("Ingredient statement, by weight as added");
        sheet.say("Draft, as panade worded it.");
        sheet.add(Cell.prose("Ingredients: " + panel.statement().text()));
        sheet.add(Cell.BLANK);
        sheet.head("Name on the label", "Share of the batch");
        panel.statement()
                .names()
                .forEach(name -> sheet.add(Cell.prose(name.printed()), Cell.figure(name.share(), Form.SHARE)));
        return sheet.finish();
    }

    /** A row for each allergen and ingredient that carries it, or of which nothing is stated. */
    static Sheet allergens(PanelResult panel) {
        var sheet = new SheetDraft("Allergens", 36, 50, 36);
        var allergens = panel.allergens();
        sheet.title("Allergens");
        sheet.say(allergens.sentence());
        sheet.head("Allergen", "From", panel.law());
        carried(sheet, allergens.named(), "to be named");
        carried(sheet, allergens.others(), "not on this law's list");
        allergens.unknownFor().forEach(name -> sheet.add(row(PanelResult.NOT_KNOWN, name, "ask the supplier")));
        return sheet.finish();
    }

    private static void carried(SheetDraft sheet, List<Carried> allergens, String law) {
        allergens.forEach(each -> each.from().forEach(carrier -> sheet.add(row(each.name(), carrier, law))));
    }

    private static List<Cell> row(String allergen, String carrier, String law) {
        return List.of(Cell.prose(allergen), Cell.prose(carrier), Cell.prose(law));
    }

    /** What is still needed and what to mind, and who says so. */
    static Sheet cautions(PanelResult panel) {
        var sheet = new SheetDraft("Cautions", 90, 50);
        sheet.title("What a finished label still needs, and what to mind");
        sheet.head("Still needed", "Source");
        sourced(sheet, panel.stillNeeded());
        sheet.add(Cell.BLANK);
        sheet.add(Cell.heading("Caution"), Cell.heading("Source"));
        sourced(sheet, panel.cautions());
        return sheet.finish();
    }

    private static void sourced(SheetDraft sheet, List<Sourced> sentences) {
        sentences.forEach(each -> sheet.add(Cell.prose(each.text()), Cell.prose(each.source())));
    }
}
