package panade.document.kitchen;

import java.util.ArrayList;
import java.util.List;
import panade.sheet.Cell;
import panade.sheet.ColumnHelp;
import panade.sheet.Sheet;
import panade.sheet.SheetDraft;

/** A sheet whose heads tell what to write below. */
final class HelpedSheet {
    private static final int NARROW = 14;
    private static final int WIDE = 30;

    private final String name;
    private final SheetDraft draft;
    private final List<ColumnHelp> help = new ArrayList<>();

    HelpedSheet(String name, List<String> heads) {
        this.name = name;
        this.draft = new SheetDraft(
                name,
                heads.stream().map(head -> Heads.isLong(head) ? WIDE : NARROW).toArray(Integer[]::new));
        draft.head(heads);
        for (int i = 0; i < heads.size(); i++) {
            help.add(Heads.help(name, heads.get(i), i));
        }
    }

    void add(List<Cell> cells) {
        draft.add(cells);
    }

    Sheet finish() {
        return draft.finish().helped(help);
    }

    @Override
    public String toString() {
        return name;
    }
}
