package panade.cli.frame;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import panade.cli.setting.SetOption;
import panade.document.syntax.Overrides;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Options that stand in for what the brief says. */
public final class BriefOptions {
    @Option(
            names = "--prices",
            paramLabel = "FILE",
            description = "Use this price list instead of the brief's; repeatable.")
    private List<Path> prices = new ArrayList<>();

    @Option(names = "--batch", paramLabel = "AMOUNT", description = "Make this much, such as 20lb.")
    private @Nullable String batch;

    @Option(names = "--without", paramLabel = "ID", description = "Leave this ingredient out; repeatable.")
    private List<String> without = new ArrayList<>();

    @Option(names = "--target", paramLabel = "PRICE", description = "Hope for this price, such as 3.90/lb.")
    private @Nullable String target;

    @Mixin
    private final SetOption set = new SetOption();

    public Overrides overrides() {
        return new Overrides(List.copyOf(prices), batch, List.copyOf(without), target).trying(set.settings());
    }
}
