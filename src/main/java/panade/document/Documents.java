package panade.document;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.document.brief.BriefReader;
import panade.document.kitchen.Workbook;
import panade.document.offer.PriceListReader;
import panade.document.pantry.SetReader;
import panade.document.purchase.ScheduleReader;
import panade.document.purchase.SpreadReader;
import panade.document.purchase.StoreRoomReader;
import panade.document.purchase.SupplierRemarks;
import panade.document.setting.Edits;
import panade.document.setting.Tried;
import panade.document.syntax.Checked;
import panade.document.syntax.JsonDocument;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Overrides;
import panade.document.syntax.Overriding;
import panade.document.syntax.Problems;
import panade.document.syntax.Reading;
import panade.document.syntax.TextFile;
import panade.domain.Brief;
import panade.domain.SameLabel;
import panade.domain.pantry.IngredientSet;
import panade.domain.purchase.Offer;
import panade.domain.purchase.OfferId;
import panade.domain.purchase.Schedule;
import panade.domain.purchase.StoreRoom;
import panade.domain.trial.Formula;
import panade.domain.trial.TrialSet;
import panade.domain.trial.Weighed;

/** The way in: reads or checks the documents that a user names. */
public final class Documents {
    private Documents() {}

    /** Reads a brief with all it refers to, or everything that is wrong with any of it. */
    public static Reading<Brief> readBrief(Path file, Overrides overrides) {
        if (overrides.settings().isEmpty()) {
            return readBrief(file, overrides, Edits.NONE);
        }
        var tried = readTried(file, overrides);
        return tried instanceof Reading.Accepted<Tried> accepted
                ? new Reading.Accepted<>(accepted.value().now())
                : new Reading.Rejected<>(((Reading.Rejected<Tried>) tried).problems());
    }

    /** Reads a brief as written, and with the numbers that are to be tried. */
    public static Reading<Tried> readTried(Path file, Overrides overrides) {
        return new TriedDocuments(file, overrides).read();
    }

    /** What of the numbers to be tried the brief has a place for. */
    public static Overrides settable(Path file, Overrides overrides) {
        return new TriedDocuments(file, overrides).settable();
    }

    /** Reads a brief, some of it from elsewhere than it is written. */
    static Reading<Brief> readBrief(Path file, Overrides overrides, Edits edits) {
        var problems = new Problems();
        var shownAs = file.toString();
        var chain = new BriefChain(problems);
        var brief = chain.read(file, shownAs)
                .map(root -> edits.in(Overriding.apply(root, overrides)))
                .flatMap(root ->
                        new BriefReader(root, chain.isWhole(), overrides.without(), edits, problems).read(shownAs));
        return brief.filter(found -> problems.none())
                .map(found -> comparedWith(file, overrides, found.remarking(problems.remarks())))
                .orElseGet(() -> new Reading.Rejected<>(problems.inOrder()));
    }

    /**
     * A brief merged with those that it is based on, as it is written, each part with its own place; empty where some
     * of it cannot be read.
     */
    public static Optional<ObjectNode> written(Path file, Overrides overrides) {
        var problems = new Problems();
        var chain = new BriefChain(problems);
        return chain.read(file, file.toString())
                .map(root -> Overriding.apply(root, overrides))
                .filter(root -> problems.none());
    }

    /** The brief, which remembers what it was before the command line changed it if it must keep the label of that. */
    private static Reading<Brief> comparedWith(Path file, Overrides overrides, Brief brief) {
        var label = brief.practice().sameLabel();
        if (label == null || label.isSettled() || overrides.equals(Overrides.NONE)) {
            return new Reading.Accepted<>(brief);
        }
        return readBrief(file, Overrides.NONE) instanceof Reading.Accepted<Brief> written
                ? new Reading.Accepted<>(brief.keeping(new SameLabel(List.of(), written.value(), label.origin())))
                : readBrief(file, Overrides.NONE);
    }

    /**
     * Reads what is on hand and on what terms more can be ordered.
     *
     * @param terms files of suppliers' terms; one that is not there is passed over
     * @param stock the stock list; null when nothing is on hand
     * @param today goods whose date is past on that day are not counted on
     */
    public static Reading<StoreRoom> readStoreRoom(
            List<Path> terms, @Nullable Path stock, IngredientSet set, LocalDate today) {
        var problems = new Problems();
        var room = new StoreRoomReader(today, problems).read(terms, stock, set);
        return problems.none() ? new Reading.Accepted<>(room) : new Reading.Rejected<>(problems.inOrder());
    }

    /** Where the terms of offers would stand, whether there is such a file or not. */
    public static List<Path> termFiles(List<Offer> offers) {
        return SupplierRemarks.termFiles(offers);
    }

    /**
     * Reads what is made when.
     *
     * @param products how many products are asked for
     */
    public static Reading<Schedule> readSchedule(Path file, int products, IngredientSet set) {
        var problems = new Problems();
        var folder = file.toAbsolutePath().getParent();
        var schedule = JsonDocument.read(file, file.toString(), problems)
                .flatMap(root -> new ScheduleReader(
                                Objects.requireNonNull(folder), OptionalInt.of(products), Optional.of(set), problems)
                        .read(root));
        return schedule.filter(found -> problems.none())
                .<Reading<Schedule>>map(Reading.Accepted::new)
                .orElseGet(() -> new Reading.Rejected<>(problems.inOrder()));
    }

    /**
     * Reads how far the prices of a brief's offers may be off, as fractions of them; what is not named is not there.
     */
    public static Reading<Map<OfferId, BigFraction>> readSpreads(Path file, Brief brief) {
        var problems = new Problems();
        var spreads = new SpreadReader(brief, problems).read(file);
        return problems.none() ? new Reading.Accepted<>(spreads) : new Reading.Rejected<>(problems.inOrder());
    }

    /** Reads trials with the brief that they are about, or everything that is wrong with any of it. */
    public static Reading<TrialSet> readTrials(Path file) {
        return readTrials(file, List.of());
    }

    /**
     * The same with what stands in tables beside those that the document names.
     *
     * @param tables CSV files, or workbooks with the sheets Weighed and Measured
     */
    public static Reading<TrialSet> readTrials(Path file, List<Path> tables) {
        return new TrialDocuments(file, tables).read();
    }

    /**
     * Reads a formula with its brief, or everything that is wrong with any of it.
     *
     * @param brief in place of the one that it names; null to take that
     */
    public static Reading<Formula> readFormula(Path file, @Nullable Path brief, Overrides overrides) {
        return new FormulaDocuments(file, brief, overrides).read();
    }

    /**
     * Whether a file that may be a brief or a formula is a formula: a table, or a document that says what is made, or
     * what was printed of a blend. A workbook is a brief. What cannot be read is told by whoever reads it.
     */
    public static boolean isFormula(Path file) {
        return FormulaDocuments.isFormula(file);
    }

    /** Reads what a formula of the product of some trials weighs, or everything that is wrong with it. */
    public static Reading<Weighed> readMade(Path file, TrialSet trials) {
        return new TrialDocuments(file, List.of()).readMade(trials);
    }

    /** Reads an ingredient set from its text, before there is such a file. */
    public static Reading<IngredientSet> setOf(String text, String shownAs) {
        var problems = new Problems();
        var set = JsonDocument.parse(text, shownAs, problems).flatMap(root -> SetReader.read(root, problems));
        return set.filter(found -> problems.none())
                .<Reading<IngredientSet>>map(Reading.Accepted::new)
                .orElseGet(() -> new Reading.Rejected<>(problems.inOrder()));
    }

    /** Reads a price list from its text, before there is such a file. */
    public static Reading<List<Offer>> pricesOf(String text, String shownAs, IngredientSet set) {
        var problems = new Problems();
        var list = PriceListReader.parse(text, shownAs, set, problems);
        return list.filter(found -> problems.none())
                .<Reading<List<Offer>>>map(found -> new Reading.Accepted<>(found.offers()))
                .orElseGet(() -> new Reading.Rejected<>(problems.inOrder()));
    }

    /** The text of a file, or why it cannot be read. */
    public static Reading<String> text(Path file) {
        var problems = new Problems();
        return TextFile.read(file, file.toString(), problems)
                .<Reading<String>>map(Reading.Accepted::new)
                .orElseGet(() -> new Reading.Rejected<>(problems.inOrder()));
    }

    /** What there is to say of a brief, an ingredient set, periods, or one of the lists kept as CSV. */
    public static Checked check(Path file) {
        if (Workbook.isNamed(file)) {
            return checkBrief(file);
        }
        var problems = new Problems();
        if (file.toString().toLowerCase(Locale.ROOT).endsWith(".csv")) {
            checkTable(file, problems);
            return Checked.of(problems);
        }
        var root = JsonDocument.read(file, file.toString(), problems);
        if (root.filter(node -> holdsList(node, "ingredients")).isPresent()) {
            root.ifPresent(node -> SetReader.read(node, problems));
            return Checked.of(problems);
        }
        if (root.filter(node -> holdsList(node, "periods")).isPresent()) {
            var folder = Objects.requireNonNull(file.toAbsolutePath().getParent());
            root.ifPresent(
                    node -> new ScheduleReader(folder, OptionalInt.empty(), setBeside(file), problems).read(node));
            return Checked.of(problems);
        }
        if (root.filter(node -> holdsField(node, "responses")).isPresent()) {
            return TrialDocuments.checked(readTrials(file));
        }
        if (root.filter(node -> holdsField(node, "made")).isPresent()) {
            return FormulaDocuments.checked(readFormula(file, null, Overrides.NONE));
        }
        return root.isEmpty() ? Checked.of(problems) : checkBrief(file);
    }

    /** The ingredient set in the same folder, if there is a sound one; what is wrong with it is not told here. */
    private static Optional<IngredientSet> setBeside(Path file) {
        var unheard = new Problems();
        var beside = file.toAbsolutePath().resolveSibling("ingredients.json");
        return Files.exists(beside)
                ? JsonDocument.read(beside, beside.toString(), unheard)
                        .flatMap(node -> SetReader.read(node, unheard))
                        .filter(set -> unheard.none())
                : Optional.empty();
    }

    private static void checkTable(Path file, Problems problems) {
        if (StoreRoomReader.isTerms(file)) {
            new StoreRoomReader(LocalDate.MIN, problems).terms(List.of(file));
        } else if (StoreRoomReader.isStock(file)) {
            new StoreRoomReader(LocalDate.MIN, problems).stock(file, setBeside(file));
        } else {
            PriceListReader.read(file, file.toString(), Optional.empty(), Optional.empty(), problems);
        }
    }

    /** A brief with all that it refers to, and the terms that its goods would be ordered on. */
    private static Checked checkBrief(Path file) {
        var reading = readBrief(file, Overrides.NONE);
        if (reading instanceof Reading.Rejected<Brief> rejected) {
            return new Checked(rejected.problems(), List.of(), Optional.empty());
        }
        var brief = ((Reading.Accepted<Brief>) reading).value();
        var problems = new Problems();
        new StoreRoomReader(LocalDate.MIN, problems).terms(SupplierRemarks.termFiles(brief.offers()));
        return new Checked(
                problems.inOrder(), brief.remarks(), Optional.of(brief).filter(found -> problems.none()));
    }

    private static boolean holdsField(Node root, String name) {
        return root instanceof ObjectNode object && object.field(name).isPresent();
    }

    private static boolean holdsList(Node root, String name) {
        return root instanceof ObjectNode object
                && object.field(name)
                        .map(Field::value)
                        .filter(ArrayNode.class::isInstance)
                        .isPresent();
    }
}
