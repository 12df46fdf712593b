package warmshelf.crop;

/** Whether a crop's seed may be sprouted in a bag and moved into cells with its root showing. */
public enum BagFit {
    FITS,
    /** Seed as fine as dust cannot be picked up once its root shows. */
    TOO_FINE,
    /** Its roots bear no moving. */
    ROOTS_STAY;

    public static BagFit of(Crop crop) {
        SeedTreatment treatment = crop.treatment();
        if (treatment.has(SeedTrait.Kind.FINE_AS_DUST)) {
            return TOO_FINE;
        }
        return treatment.has(SeedTrait.Kind.OWN_CELL) ? ROOTS_STAY : FITS;
    }
}
