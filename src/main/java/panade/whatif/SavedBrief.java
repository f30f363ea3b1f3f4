package panade.whatif;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.file.WholeFile;

/** Writes what was changed as documents beside the brief that was opened, and never over that one. */
public final class SavedBrief {
    private static final Pattern NAME = Pattern.compile("[^\\p{Cntrl}/\\\\:*?\"<>|.][^\\p{Cntrl}/\\\\:*?\"<>|]{0,99}");

    private final ChangedBrief brief;
    private final List<Path> read;

    /**
     * A writer.
     *
     * @param read the documents that were read, which are never written over
     */
    public SavedBrief(ChangedBrief brief, List<Path> read) {
        this.brief = brief;
        this.read = read.stream().map(SavedBrief::place).toList();
    }

    /** What came of it. */
    public sealed interface Saved {
        /** All was written. */
        record Written(List<Path> files) implements Saved {}

        /** Some of these files are there already; nothing was written. */
        record Occupied(List<Path> files) implements Saved {}

        /**
         * Nothing was written.
         *
         * @param why a sentence
         */
        record Refused(String why) implements Saved {}
    }

    /**
     * Writes the documents, unless that would lose others.
     *
     * @param name of the file, with or without {@code .json}
     * @param over whether other documents may be lost
     */
    public Saved write(Changes changes, String name, boolean over) {
        var file = name.strip().endsWith(".json") ? name.strip() : name.strip() + ".json";
        if (!NAME.matcher(file).matches() || name.isBlank()) {
            return new Saved.Refused("Expected the name of a file, without a folder, such as thinner.json.");
        }
        if (!(brief.with(changes) instanceof Reading.Accepted<Brief> meant)) {
            return new Saved.Refused("What is typed cannot be read: mend the fields that are marked first.");
        }
        var texts = DerivedBrief.of(brief, changes, brief.file().resolveSibling(file));
        if (texts.isEmpty()) {
            return new Saved.Refused(
                    "Prices that stand in a workbook are changed there: put them back to save the rest.");
        }
        var files = List.copyOf(texts.get().keySet());
        if (files.stream().anyMatch(each -> read.contains(place(each)))) {
            return new Saved.Refused("This page was opened from a file of that name: choose another.");
        }
        var there = files.stream().filter(Files::exists).toList();
        if (!there.isEmpty() && !over) {
            return new Saved.Occupied(there);
        }
        return write(texts.get(), meant.value());
    }

    private Saved write(Map<Path, String> texts, Brief meant) {
        var files = new ArrayList<>(texts.keySet());
        try {
            for (var file : files) {
                WholeFile.write(file, Objects.requireNonNull(texts.get(file)));
            }
        } catch (IOException refused) {
            return new Saved.Refused("It cannot be written to " + files.get(0) + ": " + refused.getMessage() + ".");
        }
        return unlike(files.get(0), meant)
                .<Saved>map(why -> new Saved.Refused("It was written to " + files.get(0) + ", but " + why + "."))
                .orElseGet(() -> new Saved.Written(files));
    }

    /** How what is read again differs from what was meant; empty where it does not. */
    private static Optional<String> unlike(Path file, Brief meant) {
        if (!(Documents.readBrief(file, Overrides.NONE) instanceof Reading.Accepted<Brief> again)) {
            return Optional.of("it cannot be read again: \"panade check\" says why");
        }
        return facts(again.value()).equals(facts(meant))
                ? Optional.empty()
                : Optional.of("it does not say quite what this page says: compare them");
    }

    private static List<Object> facts(Brief brief) {
        var facts = new ArrayList<Object>();
        facts.add(brief.batch().base());
        facts.add(Optional.ofNullable(brief.target()).map(target -> target.perKg()));
        brief.bounds().forEach(bound -> {
            facts.add(bound.of());
            facts.add(Optional.ofNullable(bound.min()).map(min -> min.base()));
            facts.add(Optional.ofNullable(bound.max()).map(max -> max.base()));
        });
        brief.offers().forEach(offer -> {
            facts.add(offer.ingredient() + " of " + offer.supplier());
            facts.add(offer.pricePerKg());
        });
        return facts;
    }

    private static Path place(Path file) {
        try {
            return file.toRealPath();
        } catch (IOException none) {
            return file.toAbsolutePath().normalize();
        }
    }
}
