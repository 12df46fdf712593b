package warmshelf.timeline;

import java.time.LocalDate;
import warmshelf.crop.Crop;
import warmshelf.crop.Crop.Basis;
import warmshelf.crop.Crop.DaysToMaturity;

/** Hardening off and planting out: at the usual time, or later when the plants are not ready by then. */
record Outdoors(DateWindow hardenOff, DateWindow plantOut) {
    // Sources give 7 to 14 days, most about 10; three days is the least any of them names.
    private static final int LONGEST_HARDENING = 14;
    private static final int USUAL_HARDENING = 10;
    private static final int SHORTEST_HARDENING = 7;

    static Outdoors of(
            TimelineQuestion question,
            ExpectedEmergence emergence,
            DateWindow sowing,
            DateWindow up,
            DateWindow usualOut) {
        DateWindow out = usualOut.notBefore(ready(question, emergence, sowing, up));
        LocalDate begun = question.seen().hardeningOff();
        DateWindow harden = begun != null
                ? DateWindow.on(begun)
                : Seedlings.pending(
                        question,
                        out.plusDays(-LONGEST_HARDENING, -USUAL_HARDENING, -SHORTEST_HARDENING)
                                .notBefore(up));
        DateWindow hardened = Seedlings.pending(question, out.notBefore(harden.plusDays(SHORTEST_HARDENING)));
        LocalDate planted = question.seen().plantedOut();
        return new Outdoors(harden, planted != null ? DateWindow.on(planted) : hardened);
    }

    /** When the plants are big enough: by the crop's fewest weeks indoors, from the seedlings once these were due. */
    private static DateWindow ready(
            TimelineQuestion question, ExpectedEmergence emergence, DateWindow sowing, DateWindow up) {
        Crop crop = question.crop();
        if (question.seen().sown() == null) {
            return sowing.plusDays(SowingWindow.daysUntilReady(crop, emergence));
        }
        int growing = Math.max(SHORTEST_HARDENING, crop.weeksIndoorsMin() * 7 - emergence.comfortableDays());
        return up.plusDays(growing);
    }

    void addTo(StepList steps, TimelineQuestion question, PlantingOutWindow usual, DateWindow sowing) {
        Seen seen = question.seen();
        steps.add(
                Step.HARDEN_OFF,
                hardenOff,
                "7 to 14 days of getting used to sun, wind and cool nights before planting out on %s."
                        .formatted(TimelineWords.day(plantOut.ideal())),
                seen.hardeningOff());
        steps.add(Step.PLANT_OUT, plantOut, usual.why() + laterReason(usual), seen.plantedOut());
        question.crop().maturity().ifPresent(days -> steps.add(Step.RIPE, ripe(days, sowing), ripeReason(days), null));
    }

    private String laterReason(PlantingOutWindow usual) {
        return plantOut.ideal().isAfter(usual.days().ideal())
                ? " The usual day was %s, but the plants will be ready only on %s."
                        .formatted(TimelineWords.day(usual.days().ideal()), TimelineWords.day(plantOut.ideal()))
                : "";
    }

    private DateWindow ripe(DaysToMaturity days, DateWindow sowing) {
        int middle = (days.min() + days.max()) / 2;
        DateWindow from = days.basis() == Basis.TRANSPLANTING ? plantOut : sowing;
        return from.plusDays(days.min(), middle, days.max()).notBefore(plantOut);
    }

    private static String ripeReason(DaysToMaturity days) {
        return "%s from %s to the first harvest, by variety."
                .formatted(
                        days.min() == days.max()
                                ? TimelineWords.days(days.min())
                                : days.min() + " to " + TimelineWords.days(days.max()),
                        days.basis() == Basis.TRANSPLANTING ? "planting out" : "sowing");
    }
}
