package warmshelf.testing;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import warmshelf.crop.Crop;
import warmshelf.crop.CropHazard;
import warmshelf.crop.Hardiness;
import warmshelf.crop.RaisedFrom;
import warmshelf.crop.SeedLight;
import warmshelf.crop.SeedTreatment;
import warmshelf.crop.Soak;
import warmshelf.crop.Standing;

/** Crops that a coordinator wrote. */
public final class OwnCrops {
    private OwnCrops() {}

    /** A crop with these words wherever words are kept, and with these hazards ticked. */
    public static Crop saying(String words, Set<CropHazard> hazards) {
        SeedTreatment treatment = new SeedTreatment(
                Soak.UNKNOWN, SeedTreatment.Span.UNKNOWN, false, SeedTreatment.Span.UNKNOWN, List.of(), words);
        return new Crop(
                "oca",
                "Oca",
                words,
                Hardiness.TENDER,
                6,
                6,
                0,
                0,
                null,
                0.0,
                SeedLight.NOT_KNOWN,
                RaisedFrom.SEED,
                treatment,
                hazards,
                Optional.empty(),
                null,
                null,
                Set.of(),
                words,
                "Ilse",
                "",
                Standing.PUBLISHED);
    }
}
