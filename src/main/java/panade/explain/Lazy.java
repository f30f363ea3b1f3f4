package panade.explain;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A value that is worked out when it is first asked for, and once. Where that fails, it is tried again. */
final class Lazy<T> {
    private final Supplier<T> work;
    private @Nullable T value;

    Lazy(Supplier<T> work) {
        this.work = work;
    }

    /** The value; whoever asks while it is being worked out waits for it. */
    synchronized T get() {
        var known = value;
        if (known == null) {
            known = work.get();
            value = known;
        }
        return known;
    }
}
