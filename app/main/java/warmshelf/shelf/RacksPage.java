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
 * @param drawn the racks of the sites shown, in walking order
 * @param held the racks that are held and have been by that day, by their ids
 */
public record RacksPage(
        DayStrip strip,
        List<Site> sites,
        @Nullable UUID chosen,
        List<DrawnRack> drawn,
        List<BoardLine> lines,
        List<OutLine> outages,
        List<WarmScale> key,
        Map<UUID, HeldMark> held,
        WeekAhead week) {

    /** The mark of a held rack; null: it is not held. */
    public @Nullable HeldMark hold(UUID rack) {
        return held.get(rack);
    }

    /** A rack under the name of its site. */
    public record DrawnRack(Site site, RackPicture picture) {}

    /** Those of the racks shown that are held, in walking order. */
    public List<DrawnRack> heldRacks() {
        return drawn.stream()
                .filter(rack -> held.containsKey(rack.picture().id()))
                .toList();
    }

    static RacksPage of(
            List<Site> sites, @Nullable UUID chosen, Board board, LocalDate day, LocalDate today, List<HeldMark> held) {
        List<Site> shown = Site.shown(sites, chosen);
        List<PlaceOnSite> spots = PlaceOnSite.walk(shown);
        List<DrawnRack> drawn = shown.stream()
                .flatMap(site ->
                        site.racks().stream().map(rack -> new DrawnRack(site, RackPicture.of(rack, board, day))))
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
                        .collect(Collectors.toMap(HeldMark::rackId, mark -> mark)),
                WeekAhead.of(spots, board, day));
    }
}
