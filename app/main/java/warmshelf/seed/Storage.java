package warmshelf.seed;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.seed.StorageKind.Conditions;

/**
 * How a lot is kept.
 *
 * @param measured what was measured where it lies; given exactly where the kind is {@link StorageKind#OWN}
 */
public record Storage(StorageKind kind, @Nullable Conditions measured) {
    /** Nobody knows. */
    public static final Storage UNKNOWN = of(StorageKind.UNKNOWN);

    public Storage {
        if ((kind == StorageKind.OWN) == (measured == null)) {
            throw new IllegalArgumentException("figures belong to a measured storage and to no other");
        }
    }

    /** A storage without figures of its own. */
    public static Storage of(StorageKind kind) {
        return new Storage(kind, null);
    }

    /** A storage of which temperature and moisture are known. */
    public static Storage measured(double celsius, double moisturePercent) {
        return new Storage(StorageKind.OWN, new Conditions(celsius, moisturePercent));
    }

    /** What the seed is kept at, as far as anybody knows. */
    public Optional<Conditions> conditions() {
        return measured == null ? kind.conditions() : Optional.of(measured);
    }
}
