package warmshelf.check;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import warmshelf.sowing.History;
import warmshelf.sowing.HistoryStore;

/** Puts the round of a day together from what the stores hold. */
public final class RoundStore {
    private final HistoryStore histories;
    private final TodayStore today;
    private final WalkStore walk;
    private final RoundReader reader;

    public RoundStore(HistoryStore histories, TodayStore today, WalkStore walk, RoundReader reader) {
        this.histories = histories;
        this.today = today;
        this.walk = walk;
        this.reader = reader;
    }

    /** Everything due on a day, with every mat that is warm. */
    public Round whole(LocalDate day) {
        Map<UUID, Round.MatReading> mats = new HashMap<>();
        today.mats(day)
                .forEach((id, mat) -> mats.put(
                        id,
                        new Round.MatReading(
                                id,
                                mat.name(),
                                mat.setPointC(),
                                mat.readC().isNaN() ? null : mat.readC(),
                                mat.readBy())));
        return round(histories.underWay(), day, mats);
    }

    /** What is due on a day at one member's sowings. */
    Round of(UUID member, LocalDate day) {
        return round(histories.underWay(member), day, Map.of());
    }

    private Round round(List<History> underWay, LocalDate day, Map<UUID, Round.MatReading> mats) {
        Map<UUID, PlaceAddress> addresses = walk.addresses();
        List<Round.Item> items = underWay.stream()
                .map(history -> Round.item(history, reader.subject(history, day), day, addresses))
                .filter(Objects::nonNull)
                .toList();
        return Round.of(day, items, addresses, mats);
    }
}
