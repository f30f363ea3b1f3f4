package panade.assemble;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.bench.BatchSheet;
import panade.bench.PlannedSheet;
import panade.domain.Brief;
import panade.quantity.Decimal;
import panade.quantity.Unit;
import panade.result.BatchResult;
import panade.result.BatchResult.Fail;
import panade.result.BatchResult.Line;
import panade.result.BatchResult.Planned;
import panade.result.BatchResult.Sheet;
import panade.result.BatchResult.Stage;
import panade.result.BlendResult;

/** Makes the result of {@code batch}. */
public final class BatchResults {
    private static final BigFraction GRAMS = BigFraction.of(1000);
    private static final Unit OUNCE = Unit.of("oz");
    private static final int PLACES = 6;

    private final BatchSheet sheet;
    private final Brief brief;
    private final List<Line> lines;

    private BatchResults(BatchSheet sheet) {
        this.sheet = sheet;
        this.brief = sheet.brief();
        this.lines = sheet.lines().stream().map(this::line).toList();
    }

    /** The result of weighing, without the blend that the weights are rounded from. */
    public static BatchResult of(BatchSheet sheet) {
        return result(sheet, null);
    }

    /** The same with the blend and its reasons, which take longer to work out than the weights. */
    public static BatchResult withBlend(BatchSheet sheet) {
        return result(
                sheet,
                Optional.ofNullable(sheet.best()).map(BlendResults::partOf).orElse(null));
    }

    private static BatchResult result(BatchSheet sheet, @Nullable BlendResult best) {
        return new BatchResult(
                new BatchResults(sheet).sheet(best),
                null,
                RemarkLines.of(sheet.brief().remarks()));
    }

    static Planned planned(PlannedSheet planned) {
        var brief = planned.sheet().brief();
        return new Planned(
                planned.period(),
                brief.title(),
                brief.batch().text(),
                planned.batches(),
                new BatchResults(planned.sheet()).sheet(null),
                planned.amount(),
                RemarkLines.of(brief.remarks()));
    }

    private Sheet sheet(@Nullable BlendResult best) {
        var fine = sheet.fineEnough();
        return new Sheet(
                lines,
                grams(sheet.total()),
                sheet.isMet(),
                fails(sheet.fails()),
                fails(sheet.plainFails()),
                fine == null ? null : fine.text(),
                sheet.endedEarly(),
                sheet.weighed().rawCostPerKg(),
                best,
                brief.title(),
                brief.batch().text(),
                brief.currency(),
                brief.stages().stream()
                        .map(this::stage)
                        .filter(stage -> !stage.lines().isEmpty())
                        .toList(),
                BlendResults.allergens(brief, sheet.weighed()));
    }

    private Stage stage(panade.domain.Stage stage) {
        var weighed = lines.stream()
                .filter(line -> line.stage().equals(stage.id()) && line.grams().signum() > 0)
                .toList();
        var total = weighed.stream().map(Line::grams).reduce(BigFraction.ZERO, BigFraction::add);
        return new Stage(stage.title(), total, weighed, stage.method());
    }

    private Line line(BatchSheet.Line line) {
        var least = grams(line.least());
        var most = line.most() == null ? null : grams(line.most());
        var unit = line.step().unit();
        return new Line(
                line.use().stage(),
                line.use().ingredient(),
                grams(line.weight()),
                rounded(least, RoundingMode.CEILING),
                most == null ? null : rounded(most, RoundingMode.FLOOR),
                grams(line.exact()),
                line.step().text(),
                brief.set().ingredient(line.use().ingredient()).name(),
                least,
                most,
                grams(line.step().base()),
                unit.equals(OUNCE) || unit.equals(Unit.POUND));
    }

    private static BigFraction grams(BigFraction kilograms) {
        return kilograms.multiply(GRAMS);
    }

    private static BigFraction rounded(BigFraction grams, RoundingMode mode) {
        return Decimal.of(grams.bigDecimalValue(PLACES, mode));
    }

    private static List<Fail> fails(List<BatchSheet.Fail> fails) {
        return fails.stream()
                .map(fail -> new Fail(
                        fail.path(),
                        fail.name(),
                        fail.reaches(),
                        fail.needs(),
                        fail.unit().symbol(),
                        fail.fixed()))
                .toList();
    }
}
