package panade.lazy;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A value that is worked out when it is first asked for, and once. Where that fails, it is tried again. */
public final class Lazy<T> {
    private final Supplier<T> work;
    private @Nullable T value;

    /** What some work will come to. */
    public Lazy(Supplier<T> work) {
        this.work = work;
    }

    /** What is known already. */
    public static <T> Lazy<T> known(T value) {
        return new Lazy<>(() -> value);
    }

    /** The value; whoever asks while it is being worked out waits for it. */
    public synchronized T get() {
        var known = value;
        if (known == null) {
            known = work.get();
            value = known;
        }
        return known;
    }
}
