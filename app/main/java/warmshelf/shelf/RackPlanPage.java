package warmshelf.shelf;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Racks on one day, for paper.
 *
 * @param sites all sites, to pick from
 * @param outages mats that cannot be used that day
 * @param key what degrees are called
 */
record RackPlanPage(LocalDate day, List<Site> sites, List<RackPlan> racks, List<OutLine> outages, List<WarmScale> key) {

    /** One rack, drawn and as a list. */
    public record RackPlan(String site, RackPicture picture, List<BoardLine> lines) {}

    static RackPlanPage of(List<Site> sites, @Nullable UUID chosen, Board board, LocalDate day) {
        List<Site> shown = Site.shown(sites, chosen);
        List<BoardLine> lines = BoardLine.ofDay(PlaceOnSite.walk(shown), board, day);
        return new RackPlanPage(
                day,
                sites,
                shown.stream()
                        .flatMap(site -> site.racks().stream().map(rack -> plan(site, rack, board, lines, day)))
                        .toList(),
                OutLine.of(shown, board, day, day.plusDays(1)),
                List.of(WarmScale.values()));
    }

    private static RackPlan plan(Site site, Rack rack, Board board, List<BoardLine> lines, LocalDate day) {
        return new RackPlan(
                site.name(),
                RackPicture.of(rack, board, day),
                lines.stream()
                        .filter(line -> line.spot().rack().id().equals(rack.id()))
                        .toList());
    }
}
