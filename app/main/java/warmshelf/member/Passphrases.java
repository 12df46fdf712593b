package warmshelf.member;

import com.password4j.Argon2Function;
import com.password4j.Password;
import com.password4j.types.Argon2;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;

/**
 * Hashes and checks passphrases with Argon2id, at the least cost that the OWASP Password Storage Cheat Sheet names: 19 MiB,
 * two passes, one lane.
 */
public final class Passphrases {
    static final int SHORTEST = 12;
    static final int LONGEST = 200;

    private static final Argon2Function ARGON2ID = Argon2Function.getInstance(19_456, 2, 1, 32, Argon2.ID);
    // Each check takes 19 MiB while it runs; a crowd of them must not take all the memory.
    private static final Semaphore AT_ONCE = new Semaphore(3);

    private final String hashOfNobody;

    public Passphrases() {
        this.hashOfNobody = hash(Token.random());
    }

    public String hash(String passphrase) {
        AT_ONCE.acquireUninterruptibly();
        try {
            return Password.hash(passphrase).addRandomSalt(16).with(ARGON2ID).getResult();
        } finally {
            AT_ONCE.release();
        }
    }

    /**
     * Whether the passphrase belongs to the hash. Without a hash (no such member) it does the same work and says no, so that
     * the time taken does not tell which names exist.
     */
    public boolean fits(String passphrase, @Nullable String hash) {
        String compared = hash == null ? hashOfNobody : hash;
        AT_ONCE.acquireUninterruptibly();
        try {
            boolean same = Password.check(passphrase, compared).with(Argon2Function.getInstanceFromHash(compared));
            return same && hash != null;
        } finally {
            AT_ONCE.release();
        }
    }
}
