package warmshelf.seed;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** What became of lots here, and what members mean to do with them; told by whoever keeps the sowings. */
public interface LotUse {
    /**
     * What came of finished sowings of these lots, dated by the day of sowing: seedlings up, of seeds sown. Lots without any
     * are missing.
     */
    Map<UUID, List<GerminationTest>> results(Collection<UUID> lotIds);

    /** What is planned of each lot in a season and not yet sown. */
    Map<UUID, Meant> meant(int season);

    /**
     * What members mean to sow of a lot.
     *
     * @param sowings how many of them
     * @param plants wanted of them together
     */
    record Meant(int sowings, int plants) {}
}
