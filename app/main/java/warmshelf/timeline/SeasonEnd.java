package warmshelf.timeline;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.crop.QuickKinds;
import warmshelf.timeline.HarvestOutlook.Reach;
import warmshelf.timeline.PlantingOut.ByFrost;

/**
 * How late is still worth it. With days to the first harvest and an autumn frost that ends it: while the first harvest of the
 * usual kinds, or else of the quickest, comes before it in more years than not. What stands over winter: while it can still
 * root. Otherwise (flowers, herbs, under cover, autumn unknown): up to four weeks after the usual end of planting out, and with
 * four weeks left before a frost that kills.
 *
 * @param graceDays so many days after the usual end of planting out are still worth it
 * @param slowerDays by so many days a harvest in autumn is later
 * @param ending the autumn cold that ends the harvest; null: under cover, over winter, or the autumn is not known
 * @param autumn the first frost that kills it, at the accepted risk; null: the same, or there is none to fear
 */
record SeasonEnd(
        Crop crop,
        LocalDate latestPlantingOut,
        int graceDays,
        int slowerDays,
        @Nullable KillingFrost ending,
        @Nullable LocalDate autumn) {
    // Ours: a month later than usual still leaves most of a season, more does not.
    private static final int GRACE_DAYS = 28;

    static SeasonEnd of(TimelineQuestion question, DateWindow plantingOut) {
        Crop crop = question.crop();
        if (!(question.plantingOut() instanceof ByFrost frost)) {
            return new SeasonEnd(crop, plantingOut.latest(), GRACE_DAYS, 0, null, null);
        }
        if (frost.part() == SeasonPart.WINTER) {
            return new SeasonEnd(crop, plantingOut.latest(), 0, 0, null, null);
        }
        FrostDates dates = frost.dates();
        return new SeasonEnd(
                crop,
                plantingOut.latest(),
                GRACE_DAYS,
                frost.part() == SeasonPart.AUTUMN ? BeforeFirstFrost.SLOWER : 0,
                KillingFrost.of(dates, crop).orElse(null),
                KillingFrost.atRisk(dates, crop).orElse(null));
    }

    /** What comes of plants sown and planted out on these days before the frost; empty where that cannot be told. */
    Optional<HarvestOutlook> outlook(LocalDate sown, LocalDate plantedOut) {
        return crop.maturity().flatMap(days -> outlook(days, sown, plantedOut));
    }

    private Optional<HarvestOutlook> outlook(DaysToMaturity days, LocalDate sown, LocalDate plantedOut) {
        return ending == null
                ? Optional.empty()
                : Optional.of(HarvestOutlook.of(days, slowerDays, ending, sown, plantedOut));
    }

    /** The same of the quickest kinds; empty too where a variety's own days are known, or no kinds are known to be quicker. */
    Optional<QuickestKinds> quickest(LocalDate sown, LocalDate plantedOut) {
        Optional<HarvestOutlook> usual = outlook(sown, plantedOut);
        if (usual.isEmpty()
                || crop.maturity().filter(DaysToMaturity::ofOneVariety).isPresent()) {
            return Optional.empty();
        }
        return QuickKinds.of(crop.id())
                .flatMap(days -> outlook(days, sown, plantedOut)
                        .filter(quick -> quick.first().isBefore(usual.get().first()))
                        .map(quick -> new QuickestKinds(days, quick, usual.get().reach() == Reach.NONE)));
    }

    /** Whether plants sown and planted out on these days still come to something, be it only of the quickest kinds. */
    boolean leavesTimeFor(LocalDate sown, LocalDate plantedOut) {
        return leavesUsualKindsTime(sown, plantedOut)
                || quickest(sown, plantedOut)
                        .filter(quick -> quick.harvest().reach() != Reach.NONE)
                        .isPresent();
    }

    /** Whether the usual kinds of them do. */
    boolean leavesUsualKindsTime(LocalDate sown, LocalDate plantedOut) {
        Optional<HarvestOutlook> outlook = outlook(sown, plantedOut);
        if (outlook.isPresent()) {
            return outlook.get().reach() != Reach.NONE;
        }
        boolean early = !plantedOut.isAfter(latestPlantingOut.plusDays(graceDays));
        return early && (autumn == null || !plantedOut.plusDays(GRACE_DAYS).isAfter(autumn));
    }

    /** Whether they surely do, as far as that is known. */
    boolean surelyLeavesTimeFor(LocalDate sown, LocalDate plantedOut) {
        return outlook(sown, plantedOut)
                .map(outlook -> outlook.reach() == Reach.SURE)
                .orElseGet(() -> leavesTimeFor(sown, plantedOut));
    }

    /** Whether not even the quickest kinds, planted out on the first possible day, would ripen. */
    boolean tooShortFor(LocalDate sown, LocalDate plantedOut) {
        return outlook(sown, plantedOut).isPresent() && !leavesTimeFor(sown, plantedOut);
    }

    /** The fewest days to a first harvest that are known: the quickest kinds', or else the crop's or variety's own. */
    Optional<DaysToMaturity> fewestDays(LocalDate sown, LocalDate plantedOut) {
        return quickest(sown, plantedOut).map(QuickestKinds::days).or(crop::maturity);
    }

    /** Days between planting out and the usual frost that ends the harvest, or none known. */
    Optional<Long> daysLeftAfter(LocalDate plantedOut) {
        return Optional.ofNullable(ending)
                .map(KillingFrost::usual)
                .map(usual -> ChronoUnit.DAYS.between(plantedOut, usual));
    }
}
