package warmshelf.timeline;

import java.time.LocalDate;
import warmshelf.crop.Crop;
import warmshelf.crop.Method;

/** Whether an evening's soak is offered, and why. It is always optional, and never for treated seed. */
final class SoakRule {
    private SoakRule() {}

    /** Where a source speaks of soaking or nicking the seed; and before pre-sprouting, unless the seed is too fine for it. */
    static boolean soaks(Crop crop, Method method) {
        String treatment = crop.treatment();
        boolean named = treatment.contains("soak") || treatment.contains("nick");
        boolean tooFine = treatment.contains("dust") || treatment.contains("surface") || treatment.contains("slips");
        return named || (method == Method.BAG && !tooFine);
    }

    static String why(Crop crop, LocalDate sowing) {
        String treatment = crop.treatment();
        String reason = treatment.contains("soak") || treatment.contains("nick")
                ? "Sources for this crop: %s.".formatted(treatment)
                : "A soak evens out the sprouting in the bag (common practice); no source asks for it.";
        return "Optional, the evening before sowing on %s. %s Never soak treated seed."
                .formatted(Words.day(sowing), reason);
    }
}
