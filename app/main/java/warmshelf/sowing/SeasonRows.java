package warmshelf.sowing;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.timeline.Growing;
import warmshelf.timeline.SeasonPicture;

/**
 * The sowings of one member that belong into the picture of their season: what is under way, and what went out in the same
 * season.
 *
 * @param season the year of planting out whose frost is shown
 */
record SeasonRows(List<History> histories, int season) {
    static SeasonRows of(List<History> ofMember) {
        int season = ofMember.stream()
                .map(History::sowing)
                .filter(sowing -> !sowing.stage().isOver())
                .mapToInt(Sowing::season)
                .max()
                .orElse(0);
        return new SeasonRows(
                ofMember.stream()
                        .filter(history -> belongs(history.sowing(), season))
                        .toList(),
                season);
    }

    private static boolean belongs(Sowing sowing, int season) {
        return !sowing.stage().isOver() || (sowing.stage() == SowingStage.PLANTED_OUT && sowing.isOf(season));
    }

    /** Drawn; null where there is nothing to draw. */
    @Nullable
    SeasonPicture picture(SowingPlanner planner, LocalDate today) {
        List<Growing> growing = histories.stream()
                .map(history -> growing(history, planner, today))
                .flatMap(Optional::stream)
                .toList();
        return growing.isEmpty()
                ? null
                : SeasonPicture.of(
                                growing,
                                planner.climate(histories.get(0).sowing().grower())
                                        .orElse(null),
                                season,
                                today)
                        .orElse(null);
    }

    private static Optional<Growing> growing(History history, SowingPlanner planner, LocalDate today) {
        Sowing sowing = history.sowing();
        double celsius = history.celsius(planner);
        return planner.timeline(sowing, history.progress(), celsius, today)
                .map(timeline -> new Growing(
                        sowing.id(),
                        sowing.crop().name(),
                        sowing.variety(),
                        sowing.warm(),
                        (int) Math.round(celsius),
                        timeline));
    }
}
