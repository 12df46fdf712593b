package warmshelf.shelf;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The racks on one day.
 *
 * @param sites all sites, to pick from
 * @param chosen the one shown; null: all
 * @param held the racks that are held and have been by that day, by their ids
 */
public record RacksPage(
        DayStrip strip,
        List<Site> sites,
        @Nullable UUID chosen,
        List<DrawnSite> drawn,
        List<BoardLine> lines,
        List<OutLine> outages,
        List<WarmScale> key,
        Map<UUID, HeldMark> held) {

    /** The mark of a held rack; null: it is not held. */
    public @Nullable HeldMark hold(UUID rack) {
        return held.get(rack);
    }

    /** A site's racks side by side. */
    public record DrawnSite(String name, List<RackPicture> racks) {}

    static RacksPage of(
            List<Site> sites, @Nullable UUID chosen, Board board, LocalDate day, LocalDate today, List<HeldMark> held) {
        List<Site> shown = Site.shown(sites, chosen);
        List<PlaceOnSite> spots = PlaceOnSite.walk(shown);
        List<DrawnSite> drawn = shown.stream()
                .map(site -> new DrawnSite(
                        site.name(),
                        site.racks().stream()
                                .map(rack -> RackPicture.of(rack, board, day))
                                .toList()))
                .toList();
        return new RacksPage(
                DayStrip.around(day, today, spots, board.stays()),
                sites,
                chosen,
                drawn,
                BoardLine.ofDay(spots, board, day),
                OutLine.of(shown, board, day, day.plusDays(1)),
                List.of(WarmScale.values()),
                held.stream()
                        .filter(mark -> !mark.since().isAfter(day))
                        .collect(Collectors.toMap(HeldMark::rackId, mark -> mark)));
    }
}
