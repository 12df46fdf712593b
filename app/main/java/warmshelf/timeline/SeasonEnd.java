package warmshelf.timeline;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.Crop.Basis;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.timeline.PlantingOut.ByFrost;

/**
 * How late is still worth it. With days to the first harvest and a first autumn frost: while the usual first harvest falls
 * before that frost. Otherwise (flowers, herbs, under cover, autumn unknown): up to four weeks after the usual end of
 * planting out, and with four weeks left before any known autumn frost.
 */
record SeasonEnd(
        Crop crop, LocalDate latestPlantingOut, @Nullable LocalDate autumn) {
    // Ours: a month later than usual still leaves most of a season, more does not.
    private static final int GRACE_DAYS = 28;

    static SeasonEnd of(TimelineQuestion question, DateWindow plantingOut) {
        LocalDate autumn =
                question.plantingOut() instanceof ByFrost frost ? frost.dates().firstAutumnAtRisk() : null;
        return new SeasonEnd(question.crop(), plantingOut.latest(), autumn);
    }

    /** Whether plants sown and planted out on these days still come to something. */
    boolean leavesTimeFor(LocalDate sown, LocalDate plantedOut) {
        Optional<LocalDate> harvest = usualHarvest(sown, plantedOut);
        if (harvest.isPresent() && autumn != null) {
            return harvest.get().isBefore(autumn);
        }
        boolean early = !plantedOut.isAfter(latestPlantingOut.plusDays(GRACE_DAYS));
        return early && (autumn == null || !plantedOut.plusDays(GRACE_DAYS).isAfter(autumn));
    }

    /** Whether not even the quickest kinds, planted out on the first possible day, would ripen. */
    boolean tooShortFor(LocalDate sown, LocalDate plantedOut) {
        if (autumn == null || crop.maturity().isEmpty()) {
            return false;
        }
        DaysToMaturity days = crop.maturity().get();
        return !harvest(days.basis(), days.min(), sown, plantedOut).isBefore(autumn);
    }

    private Optional<LocalDate> usualHarvest(LocalDate sown, LocalDate plantedOut) {
        return crop.maturity().map(days -> harvest(days.basis(), (days.min() + days.max()) / 2, sown, plantedOut));
    }

    private static LocalDate harvest(Basis basis, int days, LocalDate sown, LocalDate plantedOut) {
        return basis == Basis.TRANSPLANTING
                ? plantedOut.plusDays(days)
                : DateWindow.later(sown.plusDays(days), plantedOut);
    }

    /** In words, such as '75 days from planting out to the usual first harvest'; empty where no source gives days. */
    String daysNeeded() {
        return crop.maturity()
                .map(days -> inWords((days.min() + days.max()) / 2, days.basis(), "usual"))
                .orElse("");
    }

    /** The same for the quickest kinds. */
    String daysNeededAtLeast() {
        return crop.maturity()
                .map(days -> inWords(days.min(), days.basis(), "very"))
                .orElse("");
    }

    private static String inWords(int days, Basis basis, String which) {
        String from = basis == Basis.TRANSPLANTING ? "planting out" : "sowing";
        return "%s from %s to the %s first harvest".formatted(Words.days(days), from, which);
    }

    /** Days between planting out and the autumn's frost, or none known. */
    Optional<Long> daysLeftAfter(LocalDate plantedOut) {
        return autumn == null ? Optional.empty() : Optional.of(ChronoUnit.DAYS.between(plantedOut, autumn));
    }
}
