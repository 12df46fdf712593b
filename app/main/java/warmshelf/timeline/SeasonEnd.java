package warmshelf.timeline;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.Crop.Basis;
import warmshelf.timeline.HarvestOutlook.Reach;
import warmshelf.timeline.PlantingOut.ByFrost;
import warmshelf.words.Counted;

/**
 * How late is still worth it. With days to the first harvest and an autumn frost that kills: while the first harvest comes
 * before it in more years than not. Otherwise (flowers, herbs, under cover, autumn unknown): up to four weeks after the usual
 * end of planting out, and with four weeks left before any known autumn frost.
 *
 * @param killing the autumn frost that ends the harvest; null: under cover, or the autumn is not known
 * @param autumn the first autumn frost of 0 °C at the accepted risk; null: the same, or there is none to fear
 */
record SeasonEnd(
        Crop crop,
        LocalDate latestPlantingOut,
        @Nullable KillingFrost killing,
        @Nullable LocalDate autumn) {
    // Ours: a month later than usual still leaves most of a season, more does not.
    private static final int GRACE_DAYS = 28;

    static SeasonEnd of(TimelineQuestion question, DateWindow plantingOut) {
        Crop crop = question.crop();
        if (!(question.plantingOut() instanceof ByFrost frost)) {
            return new SeasonEnd(crop, plantingOut.latest(), null, null);
        }
        FrostDates dates = frost.dates();
        return new SeasonEnd(
                crop,
                plantingOut.latest(),
                KillingFrost.of(dates, crop.hardiness()).orElse(null),
                dates.firstAutumnAtRisk());
    }

    /** What comes of plants sown and planted out on these days before the frost; empty where that cannot be told. */
    Optional<HarvestOutlook> outlook(LocalDate sown, LocalDate plantedOut) {
        return killing == null ? Optional.empty() : HarvestOutlook.of(crop, killing, sown, plantedOut);
    }

    /** Whether plants sown and planted out on these days still come to something. */
    boolean leavesTimeFor(LocalDate sown, LocalDate plantedOut) {
        Optional<HarvestOutlook> outlook = outlook(sown, plantedOut);
        if (outlook.isPresent()) {
            return outlook.get().reach() != Reach.NONE;
        }
        boolean early = !plantedOut.isAfter(latestPlantingOut.plusDays(GRACE_DAYS));
        return early && (autumn == null || !plantedOut.plusDays(GRACE_DAYS).isAfter(autumn));
    }

    /** Whether not even the quickest kinds, planted out on the first possible day, would ripen. */
    boolean tooShortFor(LocalDate sown, LocalDate plantedOut) {
        return outlook(sown, plantedOut)
                .filter(outlook -> outlook.reach() == Reach.NONE)
                .isPresent();
    }

    /** In words, such as '70 days from planting out to the very first harvest'; empty where no source gives days. */
    String daysNeededAtLeast() {
        return crop.maturity()
                .map(days -> "%s from %s to the very first harvest"
                        .formatted(
                                Counted.days(days.min()),
                                days.basis() == Basis.TRANSPLANTING ? "planting out" : "sowing"))
                .orElse("");
    }

    /** Days between planting out and the usual frost that ends the harvest, or none known. */
    Optional<Long> daysLeftAfter(LocalDate plantedOut) {
        return Optional.ofNullable(killing)
                .map(KillingFrost::usual)
                .map(usual -> ChronoUnit.DAYS.between(plantedOut, usual));
    }
}
