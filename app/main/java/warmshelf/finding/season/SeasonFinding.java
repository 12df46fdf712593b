package warmshelf.finding.season;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import warmshelf.sowing.Problem;

/**
 * A season looked back on.
 *
 * @param year by which it is named
 * @param hints comparisons that nobody planned
 * @param losses of each kind by site, by shelf, by the week of sowing and by compost
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
    public record Losses(Loss loss, By by, List<LossRate> rates) {}

    /** What sowings have in common. */
    public enum By {
        SITE,
        SHELF,
        WEEK,
        COMPOST
    }

    /** What was lost. */
    public enum Loss {
        DAMPING_OFF,
        MANY_SEEDLINGS
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
                losses(sowings, places));
    }

    private static List<Losses> losses(List<SeasonSowing> sowings, Map<UUID, Whereabouts> places) {
        List<Losses> losses = new ArrayList<>();
        for (Loss loss : Loss.values()) {
            Predicate<SeasonSowing> lost =
                    loss == Loss.DAMPING_OFF ? each -> each.had(Problem.DAMPING_OFF) : SeasonSowing::lostMany;
            for (By by : By.values()) {
                losses.add(new Losses(loss, by, LossRate.by(sowings, each -> common(each, by, places), lost)));
            }
        }
        return losses;
    }

    private static Optional<String> common(SeasonSowing sowing, By by, Map<UUID, Whereabouts> places) {
        return switch (by) {
            case SITE -> at(sowing, places).map(Whereabouts::site);
            case SHELF -> at(sowing, places).map(Whereabouts::shelf);
            case WEEK -> weekSown(sowing);
            case COMPOST -> Optional.ofNullable(sowing.compost());
        };
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
