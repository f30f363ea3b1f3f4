package panade.page;

import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.Stage;
import panade.page.Content.StageLine;
import panade.page.Content.StagePart;
import panade.page.Content.Stages;
import panade.plan.Outcome.Blended;
import panade.report.Figures;

/** A blend as it is put together. */
final class StageParts {
    private final Brief brief;
    private final Blend blend;

    private StageParts(Blended blended) {
        this.brief = blended.brief();
        this.blend = blended.blend();
    }

    static Stages of(Blended blended) {
        var parts = new StageParts(blended);
        return new Stages(blended.brief().stages().stream()
                .map(parts::part)
                .filter(part -> !part.lines().isEmpty())
                .toList());
    }

    private StagePart part(Stage stage) {
        var lines = blend.lines().stream()
                .filter(line -> line.use().stage().equals(stage.id()))
                .toList();
        var share = lines.stream().map(Blend.Line::share).reduce(BigFraction.ZERO, BigFraction::add);
        return new StagePart(
                stage.title(),
                grams(share) + " g, " + Figures.percent(share) + " %",
                lines.stream().map(this::line).toList());
    }

    private StageLine line(Blend.Line line) {
        return new StageLine(
                brief.set().ingredient(line.use().ingredient()).name(),
                line.offer().supplier(),
                grams(line.share()),
                Figures.percent(line.share()),
                Figures.percent(MoneyBars.part(line.costPerKg(), blend)));
    }

    private String grams(BigFraction share) {
        return Figures.grams(share.multiply(brief.batch().base()));
    }
}
