package warmshelf.group;

import com.password4j.Argon2Function;
import com.password4j.Password;
import com.password4j.types.Argon2;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;

/**
 * Hashes and checks passphrases with Argon2id, at the least cost that the OWASP Password Storage Cheat Sheet names: 19 MiB,
 * two passes, one lane.
 */
public final class Passphrases {
    static final int SHORTEST = 12;
    public static final int LONGEST = 200;

    private static final int MEMORY_KIB = 19_456;
    private static final int PASSES = 2;
    private static final int HASH_BYTES = 32;
    private static final int SALT_BYTES = 16;
    // Each check takes 19 MiB while it runs; a crowd of them must not take all the memory.
    private static final Semaphore AT_ONCE = new Semaphore(3);
    private static final SecureRandom RANDOM = new SecureRandom();

    private final Argon2Function argon2id;
    private final String hashOfNobody;

    public Passphrases() {
        this(MEMORY_KIB, PASSES);
    }

    /**
     * At a cost of one's own. What guards real members is made by the other constructor.
     *
     * @param memoryKib that each hash takes
     */
    public Passphrases(int memoryKib, int passes) {
        argon2id = Argon2Function.getInstance(memoryKib, passes, 1, HASH_BYTES, Argon2.ID);
        hashOfNobody = "$argon2id$v=19$m=%d,t=%d,p=1$%s$%s"
                .formatted(memoryKib, passes, randomText(SALT_BYTES), randomText(HASH_BYTES));
    }

    /** As if hashed: it costs as much to compare with, and nothing fits it. */
    private static String randomText(int bytes) {
        byte[] random = new byte[bytes];
        RANDOM.nextBytes(random);
        return Base64.getEncoder().withoutPadding().encodeToString(random);
    }

    String hashOfNobody() {
        return hashOfNobody;
    }

    public String hash(String passphrase) {
        AT_ONCE.acquireUninterruptibly();
        try {
            return Password.hash(passphrase)
                    .addRandomSalt(SALT_BYTES)
                    .with(argon2id)
                    .getResult();
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
