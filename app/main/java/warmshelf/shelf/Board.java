package warmshelf.shelf;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What lies where over a range of days, how warm the mats are, and which cannot be used. */
public final class Board {
    private final List<StayOnBoard> stays;
    private final SetPoints setPoints;
    private final List<Outage> outages;
    private final Map<UUID, List<StayOnBoard>> byPlace;

    public Board(List<StayOnBoard> stays, SetPoints setPoints, List<Outage> outages) {
        this.stays = List.copyOf(stays);
        this.setPoints = setPoints;
        this.outages = List.copyOf(outages);
        this.byPlace = stays.stream().collect(Collectors.groupingBy(StayOnBoard::placeId));
    }

    /** The same with each stay marked. */
    Board marked(Function<StayOnBoard, StayMark> mark) {
        return new Board(stays.stream().map(stay -> stay.with(mark.apply(stay))).toList(), setPoints, outages);
    }

    public List<StayOnBoard> stays() {
        return stays;
    }

    public SetPoints setPoints() {
        return setPoints;
    }

    /** The days on which a mat cannot be used, the earliest first. */
    public List<Outage> outages(UUID matId) {
        return outages.stream().filter(outage -> outage.matId().equals(matId)).toList();
    }

    /** Why a mat cannot be used on a day. */
    public Optional<Outage> outage(UUID matId, LocalDate day) {
        return outages(matId).stream().filter(outage -> outage.covers(day)).findFirst();
    }

    /** Stays on a place, in the order in which they were read. */
    public List<StayOnBoard> at(UUID placeId) {
        return byPlace.getOrDefault(placeId, List.of());
    }

    /** Stays on a place on a day, from quarter 1 on. */
    public List<StayOnBoard> lying(UUID placeId, LocalDate day) {
        return at(placeId).stream()
                .filter(stay -> stay.lies(day))
                .sorted(Comparator.comparingInt(StayOnBoard::firstQuarter))
                .toList();
    }
}
