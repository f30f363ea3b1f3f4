package panade.document.kitchen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.quantity.Decimal;
import panade.sheet.Book;
import panade.sheet.Cell;

/**
 * A kitchen as a workbook.
 *
 * @param brief merged with what it is based on
 * @param set the ingredient set
 * @param prices rows of the price lists, by column
 * @param suppliers rows of the suppliers' terms, by column
 */
public record KitchenBook(
        ObjectNode brief, ObjectNode set, List<Map<String, String>> prices, List<Map<String, String>> suppliers) {
    private static final Set<String> ELSEWHERE =
            Set.of("basedOn", "ingredients", "prices", "bounds", "stages", "rules");
    private static final List<String> BOUND = List.of(
            "name",
            Sheets.IN_STAGE,
            "property",
            "kind",
            "ingredient",
            "stage",
            "sum",
            "within",
            "per",
            "min",
            "max",
            "state",
            "sure",
            "learned",
            "of");
    private static final List<String> STAGE =
            List.of("id", "title", "kinds", "ingredients", Sheets.SHARE_MIN, Sheets.SHARE_MAX, "method", "weighing");
    private static final List<String> PRICE =
            List.of("ingredient", "supplier", "price", "per", "pack", "minimum", "available", "currency", "note");
    private static final List<String> SUPPLIER = List.of("supplier", "minimumOrder", "delivery", "leadDays");
    private static final List<String> TRAIT = List.of(Sheets.TRAIT, "title", "unit", "absent", "sum");

    /** The sheets. */
    public Book book() {
        return new Book(List.of(
                briefSheet().finish(),
                boundSheet().finish(),
                stageSheet().finish(),
                ingredientSheet().finish(),
                traitSheet().finish(),
                csv(Sheets.PRICES, PRICE, prices).finish(),
                csv(Sheets.SUPPLIERS, SUPPLIER, suppliers).finish()));
    }

    private HelpedSheet briefSheet() {
        var sheet = new HelpedSheet(Sheets.BRIEF, List.of(Sheets.FIELD, Sheets.VALUE, "what it means"));
        put(sheet, "", brief.fields(), ELSEWHERE);
        for (var rule : items(brief, "rules")) {
            line(sheet, Sheets.RULE, CellText.of(Sheets.RULE, rule));
        }
        put(sheet, Sheets.PANTRY + ".", set.fields(), Set.of("traits", "ingredients"));
        return sheet;
    }

    private static void put(HelpedSheet sheet, String before, List<Field> fields, Set<String> elsewhere) {
        for (var field : fields) {
            var name = before + field.name();
            if (elsewhere.contains(field.name())) {
                continue;
            }
            if (isOpened(field)) {
                ((ObjectNode) field.value())
                        .fields()
                        .forEach(inner -> line(
                                sheet,
                                name + "." + inner.name(),
                                CellText.of(field.name() + "." + inner.name(), inner.value())));
            } else {
                line(sheet, name, CellText.of(name, field.value()));
            }
        }
    }

    private static boolean isOpened(Field field) {
        return Sheets.OPENED.contains(field.name())
                && field.value() instanceof ObjectNode object
                && object.fields().stream()
                        .noneMatch(inner -> inner.name().contains(".") || inner.value() instanceof ObjectNode);
    }

    private static void line(HelpedSheet sheet, String name, Cell value) {
        sheet.add(List.of(Cell.text(name), value, Cell.prose(Heads.field(name))));
    }

    private HelpedSheet boundSheet() {
        var sheet = new HelpedSheet(Sheets.BOUNDS, BOUND);
        items(brief, "bounds").forEach(bound -> sheet.add(row(BOUND, (ObjectNode) bound, Map.of())));
        for (var stage : items(brief, "stages")) {
            var id = ((ObjectNode) stage).field("id").map(Field::value).orElse(stage);
            items((ObjectNode) stage, "bounds")
                    .forEach(bound -> sheet.add(row(BOUND, (ObjectNode) bound, Map.of(Sheets.IN_STAGE, id))));
        }
        return sheet;
    }

    private HelpedSheet stageSheet() {
        var sheet = new HelpedSheet(Sheets.STAGES, STAGE);
        for (var item : items(brief, "stages")) {
            var stage = (ObjectNode) item;
            var share = new LinkedHashMap<String, Node>();
            stage.field("share")
                    .filter(field -> field.value() instanceof ObjectNode)
                    .ifPresent(field -> ((ObjectNode) field.value())
                            .fields()
                            .forEach(limit -> share.put("share " + limit.name(), limit.value())));
            sheet.add(row(STAGE, stage, share));
        }
        return sheet;
    }

    private HelpedSheet ingredientSheet() {
        var heads = new ArrayList<>(Sheets.ABOUT.subList(0, Sheets.ABOUT.indexOf("source") + 1));
        var all = items(set, "ingredients").stream().map(ObjectNode.class::cast).toList();
        Sheets.ABOUT.stream()
                .filter(head -> !heads.contains(head) && !head.equals("values") && !head.equals("spread"))
                .filter(head -> all.stream().anyMatch(each -> each.field(head).isPresent()))
                .forEach(heads::add);
        Stream.of("values", "spread")
                .filter(head -> all.stream().anyMatch(each -> !odd(each, head).isEmpty()))
                .forEach(heads::add);
        var values = columns(all, "values");
        var spreads = columns(all, "spread");
        var columns = Stream.of(
                        heads.stream(), values.stream(), spreads.stream().map(Sheets.SPREAD::concat))
                .flatMap(head -> head)
                .toList();
        var sheet = new HelpedSheet(Sheets.INGREDIENTS, columns);
        for (var each : all) {
            var figures = new LinkedHashMap<String, Node>();
            plain(each, "values").forEach(field -> figures.put(field.name(), field.value()));
            plain(each, "spread").forEach(field -> figures.put(Sheets.SPREAD + field.name(), field.value()));
            var odd = Stream.of("values", "spread")
                    .filter(name -> !odd(each, name).isEmpty())
                    .toList();
            odd.forEach(name -> figures.put(name, new ObjectNode(each.origin(), odd(each, name))));
            var cells = Stream.of("values", "spread")
                    .filter(name -> !odd.contains(name))
                    .toList();
            sheet.add(row(columns, without(each, cells), figures));
        }
        return sheet;
    }

    private static ObjectNode without(ObjectNode object, List<String> names) {
        return new ObjectNode(
                object.origin(),
                object.fields().stream()
                        .filter(field -> !names.contains(field.name()))
                        .toList());
    }

    private static List<Field> plain(ObjectNode each, String name) {
        return inside(each, name).stream().filter(field -> isHead(field.name())).toList();
    }

    /** What no column can be named by is written out in one cell. */
    private static List<Field> odd(ObjectNode each, String name) {
        return inside(each, name).stream()
                .filter(field -> !isHead(field.name()))
                .toList();
    }

    private static boolean isHead(String name) {
        return !name.isBlank()
                && name.equals(name.strip())
                && !name.startsWith(Sheets.SPREAD)
                && !Sheets.ABOUT.contains(name);
    }

    private static List<String> columns(List<ObjectNode> all, String name) {
        return all.stream()
                .flatMap(each -> plain(each, name).stream())
                .map(Field::name)
                .distinct()
                .toList();
    }

    private static List<Field> inside(ObjectNode object, String name) {
        return object.field(name)
                .map(Field::value)
                .filter(ObjectNode.class::isInstance)
                .map(found -> ((ObjectNode) found).fields())
                .orElse(List.of());
    }

    private HelpedSheet traitSheet() {
        var sheet = new HelpedSheet(Sheets.TRAITS, TRAIT);
        inside(set, "traits").forEach(trait -> {
            var name = new TextNode(trait.nameOrigin(), trait.name());
            sheet.add(row(TRAIT, (ObjectNode) trait.value(), Map.of(Sheets.TRAIT, name)));
        });
        return sheet;
    }

    private static List<Cell> row(List<String> heads, ObjectNode object, Map<String, Node> more) {
        return heads.stream()
                .map(head -> Optional.ofNullable(more.get(head))
                        .or(() -> object.field(head).map(Field::value))
                        .map(value -> CellText.of(cleared(head), value))
                        .orElse(Cell.BLANK))
                .toList();
    }

    private static String cleared(String head) {
        return head.startsWith("share ") ? head.substring("share ".length()) : head;
    }

    private static List<Node> items(ObjectNode object, String name) {
        return object.field(name).map(Field::value).orElse(object) instanceof ArrayNode array
                ? array.items()
                : List.of();
    }

    private static HelpedSheet csv(String name, List<String> heads, List<Map<String, String>> rows) {
        var sheet = new HelpedSheet(name, heads);
        rows.forEach(row -> sheet.add(heads.stream()
                .map(head -> row.getOrDefault(head, ""))
                .map(text -> text.isEmpty()
                        ? Cell.BLANK
                        : Decimal.parse(text)
                                .map(number -> CellText.number(number, text))
                                .orElseGet(() -> CellText.text(text)))
                .toList()));
        return sheet;
    }
}
