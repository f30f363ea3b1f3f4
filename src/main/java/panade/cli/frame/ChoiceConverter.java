package panade.cli.frame;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import panade.cli.interview.Addition;
import panade.label.nutrition.EnergyMethod;
import panade.label.nutrition.Format;
import picocli.CommandLine.ITypeConverter;

/** Reads one of the constants of an enumeration, in small letters or large. */
public abstract sealed class ChoiceConverter<E extends Enum<E>> implements ITypeConverter<E> {
    private final E[] choices;

    private ChoiceConverter(E[] choices) {
        this.choices = choices;
    }

    @Override
    public final E convert(String text) {
        return Arrays.stream(choices)
                .filter(each -> each.name().equalsIgnoreCase(text))
                .findFirst()
                .orElseThrow(() -> new UnreadableOption(Arrays.stream(choices)
                        .map(each -> each.name().toLowerCase(Locale.ROOT))
                        .collect(Collectors.joining(", ", "expected one of ", "."))));
    }

    /** Whose label. */
    public static final class OfFormat extends ChoiceConverter<Format> {
        public OfFormat() {
            super(Format.values());
        }
    }

    /** What is added to a pantry. */
    public static final class OfAddition extends ChoiceConverter<Addition> {
        public OfAddition() {
            super(Addition.values());
        }
    }

    /** How energy is counted. */
    public static final class OfEnergy extends ChoiceConverter<EnergyMethod> {
        public OfEnergy() {
            super(EnergyMethod.values());
        }
    }
}
