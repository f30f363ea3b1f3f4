package panade.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import panade.document.kitchen.KitchenBook;
import panade.document.kitchen.PantrySheetsReader;
import panade.document.kitchen.Workbook;
import panade.document.offer.PriceListReader;
import panade.document.purchase.StoreRoomReader;
import panade.document.purchase.SupplierRemarks;
import panade.document.syntax.Expect;
import panade.document.syntax.JsonDocument;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Overrides;
import panade.document.syntax.Problems;
import panade.document.syntax.Reading;
import panade.document.syntax.References;
import panade.domain.Brief;
import panade.domain.origin.Remark;
import panade.sheet.Book;

/** Writes kitchens as workbooks that are read again as the same brief. */
public final class KitchenWorkbooks {
    /**
     * A workbook of a kitchen.
     *
     * @param notes what a workbook does not keep of the documents, in whole sentences
     * @param remarks on the brief
     */
    public record Written(Book book, List<String> notes, List<Remark> remarks) {}

    private final Problems problems = new Problems();
    private final Expect expect = new Expect(problems);

    private KitchenWorkbooks() {}

    /** The workbook of a brief with all it refers to, or everything that is wrong with any of it. */
    public static Reading<Written> of(Path file) {
        var reading = Documents.readBrief(file, Overrides.NONE);
        return reading instanceof Reading.Accepted<Brief> accepted
                ? new Reading.Accepted<>(new KitchenWorkbooks().written(file, accepted.value()))
                : new Reading.Rejected<>(((Reading.Rejected<Brief>) reading).problems());
    }

    /** A small invented kitchen to begin with. */
    public static Book example() {
        var made = new KitchenWorkbooks();
        return new KitchenBook(
                        made.object("example-brief.json"),
                        made.object("example-ingredients.json"),
                        PriceListReader.written(resource("example-prices.csv"), made.problems),
                        StoreRoomReader.written(resource("example-suppliers.csv"), made.problems))
                .book();
    }

    private ObjectNode object(String name) {
        return JsonDocument.parse(resource(name), name, problems)
                .flatMap(node -> expect.object(node, "an object"))
                .orElseThrow();
    }

    private static String resource(String name) {
        try (var in = KitchenBook.class.getResourceAsStream(name)) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Written written(Path file, Brief read) {
        var brief = new BriefChain(problems).read(file, file.toString()).orElseThrow();
        var notes = new ArrayList<String>();
        brief.field("basedOn")
                .ifPresent(
                        field -> notes.add("What the brief is based on is written into it; later changes there do not"
                                + " reach the workbook."));
        var lists = files(brief, "prices");
        if (lists.size() > 1) {
            notes.add("The " + lists.size()
                    + " price lists stand in one sheet, and no longer say which row was in which.");
        }
        var prices = new ArrayList<Map<String, String>>();
        lists.forEach(list -> prices.addAll(PriceListReader.written(list, problems)));
        var terms = new ArrayList<Map<String, String>>();
        SupplierRemarks.termFiles(read.offers()).stream()
                .filter(Files::isReadable)
                .forEach(each -> terms.addAll(StoreRoomReader.written(each, problems)));
        var book = new KitchenBook(brief, set(files(brief, "ingredients").get(0)), prices, terms).book();
        return new Written(book, notes, read.remarks());
    }

    private ObjectNode set(Path file) {
        var root = Workbook.isNamed(file)
                ? PantrySheetsReader.read(file, file.toString(), problems)
                : JsonDocument.read(file, file.toString(), problems)
                        .flatMap(node -> expect.object(node, "an ingredient set"));
        return root.orElseThrow();
    }

    private List<Path> files(ObjectNode brief, String name) {
        var value = brief.field(name).orElseThrow().value();
        var texts = value instanceof TextNode text ? List.of(text) : expect.texts(value, "paths");
        return texts.stream()
                .flatMap(text -> new References(problems).file(text).stream())
                .distinct()
                .toList();
    }
}
