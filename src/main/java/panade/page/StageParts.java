package panade.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.page.Content.StageLine;
import panade.page.Content.StagePart;
import panade.page.Content.Stages;
import panade.report.Figures;
import panade.result.BlendResult;
import panade.result.BlendResult.BlendLine;

/** A blend as it is put together. */
public final class StageParts {
    private StageParts() {}

    /** The stages of a blend in their order. */
    public static Stages of(BlendResult result) {
        Map<String, List<BlendLine>> stages = new LinkedHashMap<>();
        result.blend()
                .forEach(line -> stages.computeIfAbsent(line.stage(), stage -> new ArrayList<>())
                        .add(line));
        return new Stages(stages.values().stream().map(StageParts::part).toList());
    }

    private static StagePart part(List<BlendLine> lines) {
        return new StagePart(
                lines.get(0).stageTitle(),
                Figures.grams(sum(lines, BlendLine::kilograms)) + " g, " + Figures.percent(sum(lines, BlendLine::share))
                        + " %",
                lines.stream().map(StageParts::line).toList());
    }

    private static BigFraction sum(List<BlendLine> lines, Function<BlendLine, BigFraction> figure) {
        return lines.stream().map(figure).reduce(BigFraction.ZERO, BigFraction::add);
    }

    private static StageLine line(BlendLine line) {
        return new StageLine(
                line.name(),
                line.supplier(),
                Figures.grams(line.kilograms()),
                Figures.percent(line.share()),
                Figures.percent(line.costShare()));
    }
}
