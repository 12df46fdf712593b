package warmshelf.seed;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A lot as it is put into the box; see {@link Lot} for the fields. */
public record NewLot(
        String cropId,
        String variety,
        int seedYear,
        @Nullable Integer seedsLeft,
        @Nullable UUID ownerId,
        boolean treated,
        String note,
        SeedSource source,
        Storage storage) {

    /** A bought packet of which nobody has said how it is kept. */
    public NewLot(
            String cropId,
            String variety,
            int seedYear,
            @Nullable Integer seedsLeft,
            @Nullable UUID ownerId,
            boolean treated,
            String note) {
        this(cropId, variety, seedYear, seedsLeft, ownerId, treated, note, SeedSource.PACKET, Storage.UNKNOWN);
    }
}
