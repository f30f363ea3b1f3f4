package panade.export;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import java.math.BigDecimal;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.lazy.Lazy;
import panade.quantity.Decimal;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.ser.std.StdSerializer;

/** Writes result records as JSON: their components in their order. */
public final class ResultJson {
    private static final int DIGITS = 15;

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .changeDefaultVisibility(seen -> seen.withGetterVisibility(Visibility.NONE)
                    .withIsGetterVisibility(Visibility.NONE)
                    .withFieldVisibility(Visibility.ANY))
            .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .addModule(new SimpleModule()
                    .addSerializer(BigFraction.class, new FractionSerializer())
                    .addSerializer(Lazy.class, new LazySerializer())
                    .addSerializer(Enum.class, new ConstantSerializer()))
            .build();

    private ResultJson() {}

    /** The JSON of a result, with a line break at its end. */
    public static String text(Object result) {
        return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(result) + "\n";
    }

    /** The same as a part of a larger tree. */
    static ObjectNode tree(Object result) {
        return MAPPER.valueToTree(result);
    }

    /** A figure rounded to {@value #DIGITS} significant digits. */
    static BigDecimal number(BigFraction value) {
        return Decimal.significant(value, DIGITS);
    }

    private static final class FractionSerializer extends StdSerializer<BigFraction> {
        FractionSerializer() {
            super(BigFraction.class);
        }

        @Override
        public void serialize(BigFraction value, JsonGenerator json, SerializationContext context) {
            json.writeNumber(number(value));
        }
    }

    /** A part that is worked out when it is asked for is written like any other. */
    @SuppressWarnings("rawtypes")
    private static final class LazySerializer extends StdSerializer<Lazy> {
        LazySerializer() {
            super(Lazy.class);
        }

        @Override
        public void serialize(Lazy value, JsonGenerator json, SerializationContext context) {
            context.writeValue(json, value.get());
        }
    }

    @SuppressWarnings("rawtypes")
    private static final class ConstantSerializer extends StdSerializer<Enum> {
        ConstantSerializer() {
            super(Enum.class);
        }

        @Override
        public void serialize(Enum value, JsonGenerator json, SerializationContext context) {
            json.writeString(value.name().toLowerCase(Locale.ROOT).replace('_', ' '));
        }
    }
}
