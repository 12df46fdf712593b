package warmshelf.timeline;

import java.time.LocalDate;
import warmshelf.crop.Crop;
import warmshelf.crop.Method;
import warmshelf.crop.RaisedFrom;
import warmshelf.crop.SeedTreatment;
import warmshelf.crop.Soak;
import warmshelf.crop.TreatmentWords;

/** Whether an evening's soak is offered, and why. It is always optional, and never for treated seed. */
final class SoakRule {
    private SoakRule() {}

    /** Where a source speaks of soaking or nicking the seed; and before pre-sprouting, unless the seed is too fine for it. */
    static boolean soaks(Crop crop, Method method) {
        if (crop.raisedFrom() == RaisedFrom.SLIPS) {
            return false;
        }
        SeedTreatment treatment = crop.treatment();
        return treatment.softens() || (method == Method.BAG && treatment.soak() != Soak.NEVER);
    }

    static String why(Crop crop, LocalDate sowing) {
        SeedTreatment treatment = crop.treatment();
        String reason = treatment.softens()
                ? "Of this crop sources say: %s".formatted(TreatmentWords.coat(treatment))
                : "A soak evens out the sprouting in the bag (common practice); no source asks for it.";
        return "Optional, the evening before sowing on %s. %s Never soak treated seed."
                .formatted(TimelineWords.day(sowing), reason);
    }
}
