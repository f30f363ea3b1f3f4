package panade.serve;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * What only the one who started the program knows: the key in the address of everything, and a ticket that leads to it
 * once. The ticket is what a browser is started with, for all on this machine can read what programs are started with.
 */
final class Keys {
    private static final int BYTES = 24;

    private final String key;
    private final String ticket;
    private final AtomicBoolean spent = new AtomicBoolean();

    Keys(SecureRandom random) {
        this.key = drawn(random);
        this.ticket = drawn(random);
    }

    private static String drawn(SecureRandom random) {
        var bytes = new byte[BYTES];
        random.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    String key() {
        return key;
    }

    String ticket() {
        return ticket;
    }

    boolean isKey(String word) {
        return same(key, word);
    }

    /** Whether that is the ticket, which is spent then. */
    boolean spend(String word) {
        return same(ticket, word) && spent.compareAndSet(false, true);
    }

    /** Compares in a time that says nothing of where two words differ. */
    private static boolean same(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}
