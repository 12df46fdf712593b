package warmshelf.crop;

/** What of a crop somebody has in the hands at a step, so that only the hazards of that are warned of. */
public enum Handled {
    /** Seed while it is sown, the once that it is chosen. */
    SOWING,
    /** Seed, sown or sprouting. */
    SEED,
    /** A young plant indoors. */
    YOUNG_PLANT,
    /** A plant on its way out, into the sun and to where animals are. */
    OUTDOORS,
    /** The grown plant, cut or picked, and its fruit. */
    HARVEST
}
