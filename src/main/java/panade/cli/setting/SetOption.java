package panade.cli.setting;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import panade.document.setting.Setting;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The option that tries numbers without editing. */
public final class SetOption {
    @Spec(Spec.Target.MIXEE)
    private @Nullable CommandSpec spec;

    @Option(
            names = "--set",
            paramLabel = "SETTING",
            description = "Try a number without editing, and tell what it moves: \"NAME min 4 %%\","
                    + " \"NAME max 300 mg/100g\", \"NAME = 2 %%\" for both, \"price ID 3.10/lb\","
                    + " \"available ID 5 lb\" or \"out ID\"; repeatable.")
    private List<String> settings = new ArrayList<>();

    /** What was typed, each in one of the forms. */
    public List<String> settings() {
        for (var text : settings) {
            if (Setting.of(text).isEmpty()) {
                throw new ParameterException(
                        Objects.requireNonNull(spec).commandLine(),
                        "--set \"" + text + "\": expected " + Setting.FORMS + ".");
            }
        }
        return List.copyOf(settings);
    }
}
