package panade.testing;

import java.util.concurrent.ThreadLocalRandom;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Gives every property a seed of its own that stays the same from run to run, so that a test that passes here passes
 * everywhere. The system property {@value #SEED} asks for another: a number for all properties, or {@value #FRESH} for
 * new ones, each printed so that a failure can be repeated.
 */
public final class RepeatableSeeds implements AroundPropertyHook {
    static final String SEED = "panade.seed";
    static final String FRESH = "fresh";

    @Override
    public PropagationMode propagateTo() {
        return PropagationMode.ALL_DESCENDANTS;
    }

    @Override
    public int aroundPropertyProximity() {
        return Integer.MIN_VALUE;
    }

    @Override
    public PropertyExecutionResult aroundProperty(PropertyLifecycleContext context, PropertyExecutor property) {
        if (context.attributes().seed().isEmpty()) {
            context.attributes().setSeed(Long.toString(seed(context)));
        }
        return property.execute();
    }

    private static long seed(PropertyLifecycleContext context) {
        return seed(context.containerClass().getSimpleName() + "."
                + context.targetMethod().getName());
    }

    /** The seed of a test that draws by itself. */
    public static long seed(String name) {
        var asked = System.getProperty(SEED, "");
        if (!asked.equals(FRESH)) {
            return asked.isEmpty() ? name.hashCode() : Long.parseLong(asked);
        }
        long seed = ThreadLocalRandom.current().nextLong();
        System.out.println(name + " drew with -D" + SEED + "=" + seed);
        return seed;
    }
}
