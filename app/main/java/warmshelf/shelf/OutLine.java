package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A mat that cannot be used on some of the days shown.
 *
 * @param where site, rack and shelf in words
 */
public record OutLine(Mat mat, String where, Outage outage) {

    /** Those of some sites in walking order, on days from one up to but not on another. */
    static List<OutLine> of(List<Site> sites, Board board, LocalDate from, LocalDate to) {
        List<OutLine> lines = new ArrayList<>();
        for (Site site : sites) {
            for (Rack rack : site.racks()) {
                for (Shelf shelf : rack.shelves()) {
                    String where = SAY.shelfOf(site.name(), rack.name(), shelf.fromTop());
                    shelf.mats()
                            .forEach(mat -> board.outages(mat.id()).stream()
                                    .filter(outage -> !outage.isForGood() && outage.touches(from, to))
                                    .forEach(outage -> lines.add(new OutLine(mat, where, outage))));
                }
            }
        }
        return lines;
    }
}
