package warmshelf.shelf;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** What lies where over a range of days, and how warm the mats are. */
public record Board(List<StayOnBoard> stays, SetPoints setPoints) {

    /** Stays on a place on a day, from quarter 1 on. */
    public List<StayOnBoard> lying(UUID placeId, LocalDate day) {
        return stays.stream()
                .filter(stay -> stay.placeId().equals(placeId) && stay.lies(day))
                .sorted(java.util.Comparator.comparingInt(StayOnBoard::firstQuarter))
                .toList();
    }
}
