package warmshelf.timeline;

import java.time.LocalDate;
import java.util.Map;
import warmshelf.crop.Crop;
import warmshelf.crop.Crop.Basis;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.guide.PracticeDays;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;

/** Hardening off and planting out: at the usual time, or later when the plants are not ready by then. */
record Outdoors(DateWindow hardenOff, DateWindow plantOut) {
    private static final PracticeDays HARDENING = PracticeDays.of("hardening off", "days");
    private static final int LONGEST_HARDENING = HARDENING.most();
    private static final int SHORTEST_HARDENING = HARDENING.least();
    private static final int USUAL_HARDENING =
            PracticeDays.of("hardening off", "usual days").least();

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
                Step.HARDEN_OFF.why(
                        "why", Map.of("plantingOut", DayWords.dayOfMonth(plantOut.ideal())), question.units()),
                seen.hardeningOff());
        steps.add(Step.PLANT_OUT, plantOut, usual.why(laterThan(usual)), seen.plantedOut());
        if (question.plantingOut() instanceof PlantingOut.ByFrost) {
            PlantCare.outdoors(question.crop())
                    .ifPresent(care -> steps.add(care.step(), care.after(plantOut), care.why(question), null));
        }
        SeasonPart part = question.plantingOut().seasonPart();
        if (part != SeasonPart.WINTER) {
            int slower = part == SeasonPart.AUTUMN ? BeforeFirstFrost.SLOWER : 0;
            question.crop()
                    .maturity()
                    .ifPresent(days ->
                            steps.add(Step.RIPE, ripe(days, slower, sowing), ripeReason(days, slower, question), null));
        }
    }

    /** The usual day and the later one on which the plants will be ready; empty where they will be by the usual day. */
    private Map<String, String> laterThan(PlantingOutWindow usual) {
        boolean later = plantOut.ideal().isAfter(usual.days().ideal());
        return Map.of(
                "usualDay",
                later ? DayWords.dayOfMonth(usual.days().ideal()) : "",
                "ready",
                later ? DayWords.dayOfMonth(plantOut.ideal()) : "");
    }

    private DateWindow ripe(DaysToMaturity days, int slower, DateWindow sowing) {
        int middle = (days.min() + days.max()) / 2;
        DateWindow from = days.basis() == Basis.TRANSPLANTING ? plantOut : sowing;
        return from.plusDays(days.min() + slower, middle + slower, days.max() + slower)
                .notBefore(plantOut);
    }

    private static Reason ripeReason(DaysToMaturity days, int slower, TimelineQuestion question) {
        String range =
                days.min() == days.max() ? Counted.days(days.min()) : days.min() + " to " + Counted.days(days.max());
        return Step.RIPE.why(
                "why",
                Map.of(
                        "days",
                        range,
                        "fromPlantingOut",
                        days.basis() == Basis.TRANSPLANTING,
                        "slower",
                        slower > 0 ? Counted.days(slower) : ""),
                question.units());
    }
}
