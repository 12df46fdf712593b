package warmshelf.finding;

/** What keeps a comparison from saying more than it does. */
public enum Doubt {
    /** Two weeks or more lay between two looks while seed came: its days are little known. */
    WEEKS_BETWEEN,
    /** A way had fewer than ten seeds: only large differences could show. */
    FEW_SEEDS,
    /** A way lay in one tray or bag only: what that one did to all its seeds cannot be told from what the way did. */
    ONE_TRAY_A_WAY,
    /** The ways of a block were looked at on different days, so that one may look later than it was. */
    LOOKS_DIFFER,
    /** The ways were looked at alike, but seedlings out of a bag can be counted only once the bag is done with. */
    BAG_COUNTED_LATE,
    /** The ways of a block were sown on different days. */
    SOWN_APART,
    /** The ways of a block lay at different warmth, though warmth was not what was asked. */
    WARMTH_DIFFERED,
    /** The ways were not dealt out by chance beforehand: seed, place and care may have differed as well. */
    NOT_PLANNED
}
