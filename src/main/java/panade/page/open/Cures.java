package panade.page.open;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.page.open.OpenView.Conflict;
import panade.page.open.OpenView.Cure;
import panade.report.Block;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Figures;
import panade.report.blend.ConflictReport;
import panade.result.NoBlendResult;
import panade.result.NoBlendResult.CombinedRelaxation;
import panade.result.NoBlendResult.Move;
import panade.result.NoBlendResult.Relaxation;

/** Words what would make a blend possible, with the fields that say so. */
final class Cures {
    private final Controls controls;
    private final NoBlendResult result;

    Cures(Controls controls, NoBlendResult result) {
        this.controls = controls;
        this.result = result;
    }

    Conflict conflict() {
        var cures = new ArrayList<Cure>();
        result.cures().forEach(each -> cures.add(cure(each)));
        var combined = result.combined();
        if (combined != null) {
            cures.add(cure(combined));
        }
        var words = new ArrayList<Block>();
        if (cures.isEmpty()) {
            words.add(new Paragraph("No change was found that makes a blend possible."));
        }
        if (!result.undecided().isEmpty()) {
            words.add(new Paragraph("Not decided in time:"));
            words.add(new Points(result.undecided()));
        }
        return new Conflict(ConflictReport.sets(result), cures, words);
    }

    private Cure cure(Relaxation each) {
        return new Cure(ConflictReport.change(each), cost(each.costPerKg(), each.costProved()), form(each));
    }

    private Cure cure(CombinedRelaxation combined) {
        var forms = combined.moves().stream().map(this::form).toList();
        return new Cure(
                combined.moves().stream().map(ConflictReport::change).collect(Collectors.joining("; and ")),
                cost(combined.costPerKg(), combined.costProved()),
                forms.contains("") ? "" : String.join("&", forms));
    }

    private String cost(@Nullable BigFraction perKg, @Nullable Boolean proved) {
        return ConflictReport.cost(result, perKg, proved) + (perKg == null ? "" : "/lb");
    }

    /** The change as a form; empty where no field stands for it. */
    private String form(Relaxation each) {
        if (!(each.change() instanceof Move move)) {
            return "";
        }
        var text = Figures.exactly(move.to(), move.unit());
        var one = controls.fieldAt(each.file(), each.path());
        var fields = one.map(Stream::of)
                .orElseGet(() -> Stream.of("/min", "/max")
                        .flatMap(side -> controls.fieldAt(each.file(), each.path() + side).stream()));
        return fields.map(field -> field + "=" + URLEncoder.encode(text, StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }
}
