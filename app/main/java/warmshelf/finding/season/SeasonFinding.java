package warmshelf.finding.season;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A season looked back on.
 *
 * @param year by which it is named
 * @param hints comparisons that nobody planned
 * @param losses damping-off by site, by shelf and by the week of sowing
 */
public record SeasonFinding(
        int year,
        SeasonTotals totals,
        List<CropFinding> crops,
        List<MethodHint> hints,
        List<SpaceWeek> weeks,
        List<LooksOf> looks,
        List<Losses> losses) {

    /** Rates of one kind. */
    public record Losses(By by, List<LossRate> rates) {}

    /** What sowings have in common. */
    public enum By {
        SITE,
        SHELF,
        WEEK
    }

    /** Where a place is, in the names of its site and shelf. */
    public record Whereabouts(String site, String shelf) {}

    /** Works out a season from what was read of it; the places are those that still stand. */
    static SeasonFinding of(
            int year, List<SeasonSowing> sowings, Map<UUID, Whereabouts> places, List<SpaceWeek> weeks) {
        List<CropFinding> crops = CropFinding.of(sowings);
        return new SeasonFinding(
                year,
                SeasonTotals.of(sowings, crops),
                crops,
                MethodHint.of(sowings),
                weeks,
                LooksOf.of(sowings),
                List.of(
                        new Losses(
                                By.SITE,
                                LossRate.by(sowings, each -> at(each, places).map(Whereabouts::site))),
                        new Losses(
                                By.SHELF,
                                LossRate.by(sowings, each -> at(each, places).map(Whereabouts::shelf))),
                        new Losses(By.WEEK, LossRate.by(sowings, SeasonFinding::weekSown))));
    }

    private static Optional<Whereabouts> at(SeasonSowing sowing, Map<UUID, Whereabouts> places) {
        return Optional.ofNullable(sowing.placeId()).map(places::get);
    }

    private static Optional<String> weekSown(SeasonSowing sowing) {
        @Nullable LocalDate sown = sowing.progress().seen().sown();
        return Optional.ofNullable(sown)
                .map(day -> day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY))
                        .toString());
    }

    /** Kilowatt-hours of mats and lamps at most. */
    public double kilowattHours() {
        return weeks.stream().mapToLong(SpaceWeek::wattHours).sum() / 1000.0;
    }
}
