package panade.document;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import panade.document.setting.Setting;
import panade.document.setting.SettingReader;
import panade.document.setting.Tried;
import panade.document.syntax.Overrides;
import panade.document.syntax.Overriding;
import panade.document.syntax.Problems;
import panade.document.syntax.Reading;
import panade.domain.Brief;

/**
 * Reads a brief twice: as it is written, to find what is to be set, and again with what is typed in the place of what
 * is written there, so that whatever is checked of a document is checked of the number tried.
 */
final class TriedDocuments {
    private final Path file;
    private final Overrides overrides;
    private final Problems problems = new Problems();

    TriedDocuments(Path file, Overrides overrides) {
        this.file = file;
        this.overrides = overrides;
    }

    /** The brief both ways, or everything that is wrong with it or with the settings. */
    Reading<Tried> read() {
        var written = written();
        return written instanceof Reading.Accepted<Brief> accepted
                ? tried(accepted.value())
                : new Reading.Rejected<>(((Reading.Rejected<Brief>) written).problems());
    }

    /** The same that is asked for, without the settings that the brief has no place for. */
    Overrides settable() {
        if (!(written() instanceof Reading.Accepted<Brief> accepted)) {
            return overrides;
        }
        var reader = new SettingReader(accepted.value(), problems);
        return overrides.trying(overrides.settings().stream()
                .filter(text -> Setting.of(text).filter(reader::finds).isPresent())
                .toList());
    }

    private Reading<Brief> written() {
        return Documents.readBrief(file, overrides.trying(List.of()));
    }

    private Reading<Tried> tried(Brief written) {
        var reader = new SettingReader(written, problems);
        reader.read(settings());
        if (!problems.none()) {
            return new Reading.Rejected<>(problems.inOrder());
        }
        var now = Documents.readBrief(file, overrides, reader.edits());
        return now instanceof Reading.Accepted<Brief> accepted
                ? new Reading.Accepted<>(new Tried(
                        written, accepted.value().called(overrides.titled(written.title())), reader.changes()))
                : new Reading.Rejected<>(((Reading.Rejected<Brief>) now).problems());
    }

    private List<Setting> settings() {
        var settings = new ArrayList<Setting>();
        for (var text : overrides.settings()) {
            Setting.of(text)
                    .ifPresentOrElse(
                            settings::add,
                            () -> problems.add(
                                    Overriding.optionOrigin("--set"),
                                    "\"" + text + "\" does not say what to set",
                                    "Expected " + Setting.FORMS + "."));
        }
        return settings;
    }
}
