package warmshelf.shelf;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Places down, days across.
 *
 * @param sites all sites, to pick from
 * @param chosen the one shown; null: all
 */
public record WeeksPage(
        WeeksPicture picture,
        List<Site> sites,
        @Nullable UUID chosen,
        List<BoardLine> lines,
        List<OutLine> outages,
        List<Integer> lengths,
        List<WarmScale> key) {
    static final List<Integer> LENGTHS = List.of(4, 8, 16, 26);

    static WeeksPage of(
            List<Site> sites, @Nullable UUID chosen, Board board, LocalDate from, int weeks, LocalDate today) {
        List<Site> shown = Site.shown(sites, chosen);
        return new WeeksPage(
                WeeksPicture.of(shown, board, from, weeks, today),
                sites,
                chosen,
                BoardLine.ofStays(PlaceOnSite.walk(shown), board),
                OutLine.of(shown, board, from, from.plusWeeks(weeks)),
                LENGTHS,
                List.of(WarmScale.values()));
    }

    public LocalDate earlier() {
        return picture.from().minusWeeks(picture.weeks() / 2);
    }

    public LocalDate later() {
        return picture.from().plusWeeks(picture.weeks() / 2);
    }
}
