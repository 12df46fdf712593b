package warmshelf.timeline;

import java.time.LocalDate;
import java.util.Map;
import warmshelf.crop.Crop;
import warmshelf.crop.Method;
import warmshelf.crop.RaisedFrom;
import warmshelf.crop.SeedTreatment;
import warmshelf.crop.Soak;
import warmshelf.crop.TreatmentWords;
import warmshelf.words.DayWords;

/** Whether an evening's soak is offered, and why. It is always optional, and never for treated seed. */
final class SoakRule {
    private SoakRule() {}

    /** As was decided; else as is advised. */
    static boolean soaks(TimelineQuestion question) {
        Boolean decided = question.soaks();
        return decided == null ? soaks(question.crop(), question.method()) : decided;
    }

    /** Where a source speaks of soaking or nicking the seed; and before pre-sprouting, unless the seed is too fine for it. */
    private static boolean soaks(Crop crop, Method method) {
        if (crop.raisedFrom() == RaisedFrom.SLIPS) {
            return false;
        }
        SeedTreatment treatment = crop.treatment();
        // What lay moist for weeks has drunk enough.
        boolean drank = ColdSpell.of(crop).isPresent();
        return treatment.softens() || (method == Method.BAG && treatment.soak() != Soak.NEVER && !drank);
    }

    static Reason why(TimelineQuestion question, LocalDate sowing) {
        SeedTreatment treatment = question.crop().treatment();
        String coat = treatment.softens() ? TreatmentWords.coat(treatment) : "";
        return Step.SOAK.why("why", Map.of("sowing", DayWords.dayOfMonth(sowing), "coat", coat), question.units());
    }
}
