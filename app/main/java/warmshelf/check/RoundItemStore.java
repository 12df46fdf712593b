package warmshelf.check;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.RackHoldStore;
import warmshelf.allocation.RackHolds;
import warmshelf.db.Database;
import warmshelf.label.LabelRunStore;
import warmshelf.sowing.History;
import warmshelf.sowing.HistoryStore;
import warmshelf.sowing.NotedProblem;
import warmshelf.sowing.ProblemStore;

/** Reads what the round of a day shows of sowings: of all under way, of some, of a member's own. */
public final class RoundItemStore {
    private final Database database;
    private final HistoryStore histories;
    private final TodayStore today;
    private final WalkStore walk;
    private final RoundReader reader;
    private final ProblemStore problems;
    private final HeldRackStore racks;
    private final LabelRunStore labels;

    public RoundItemStore(
            Database database,
            HistoryStore histories,
            TodayStore today,
            WalkStore walk,
            RoundReader reader,
            ProblemStore problems,
            HeldRackStore racks,
            LabelRunStore labels) {
        this.database = database;
        this.histories = histories;
        this.today = today;
        this.walk = walk;
        this.reader = reader;
        this.problems = problems;
        this.racks = racks;
        this.labels = labels;
    }

    /** Where everything stands, and who looks: the same for all sowings. */
    record Around(Map<UUID, PlaceAddress> addresses, Map<UUID, RackSketch> sketches, RoundStore.Watch watch) {}

    /**
     * A sowing's part in the round.
     *
     * @param item what is due at it or was done today; null: nothing is and was
     * @param late whether its seed is late, so that its chances hang on what is known of its lot
     */
    record Part(UUID grower, Round.@Nullable Item item, List<NotedProblem> open, boolean late) {}

    /** A member's own round, and what is told beside it. */
    record Own(Round round, List<NotedProblem> unanswered, List<ProblemStore.Told> told, List<HeldRack> held) {}

    Around around(LocalDate day) {
        Map<UUID, PlaceAddress> addresses = walk.addresses();
        return new Around(
                addresses,
                RackSketch.byPlace(addresses.values()),
                new RoundStore.Watch(today.onDuty(day), today.onDuty(day.plusDays(1))));
    }

    RackHolds holds() {
        return RackHoldStore.read(database.sql());
    }

    Map<UUID, Round.MatReading> mats(LocalDate day) {
        Map<UUID, Round.MatReading> mats = new HashMap<>();
        today.mats(day).forEach((id, mat) -> mats.put(id, Round.MatReading.of(mat)));
        return mats;
    }

    List<HeldRack> held(LocalDate day) {
        return racks.on(day);
    }

    Own own(UUID member, LocalDate day, Around around) {
        Map<UUID, Part> parts = parts(histories.underWay(member), day, around, holds());
        return new Own(
                Round.of(items(parts.values()), around.addresses(), Map.of()),
                unanswered(parts.values()),
                problems.told().getOrDefault(member, List.of()),
                racks.on(day));
    }

    /** Of every sowing under way, by its id. */
    Map<UUID, Part> all(LocalDate day, Around around, RackHolds holds) {
        return parts(histories.underWay(), day, around, holds);
    }

    /** Of some. */
    Map<UUID, Part> some(Collection<UUID> sowings, LocalDate day, Around around, RackHolds holds) {
        return sowings.isEmpty() ? Map.of() : parts(histories.all(sowings).values(), day, around, holds);
    }

    static List<Round.Item> items(Collection<Part> parts) {
        return parts.stream().flatMap(part -> Stream.ofNullable(part.item())).toList();
    }

    static List<NotedProblem> unanswered(Collection<Part> parts) {
        return NotedProblem.unanswered(parts.stream().map(Part::open).toList());
    }

    private Map<UUID, Part> parts(Collection<History> underWay, LocalDate day, Around around, RackHolds holds) {
        Map<UUID, List<NotedProblem>> open = problems.open(underWay);
        LabelRunStore.Unlabelled unlabelled = labels.unlabelled(
                underWay.stream().map(history -> history.sowing().id()).toList());
        Map<UUID, Part> parts = new HashMap<>();
        for (History history : underWay) {
            UUID id = history.sowing().id();
            List<NotedProblem> here = open.getOrDefault(id, List.of());
            Subject subject = reader.subject(history, day).among(around.addresses());
            Round.Item item = Round.item(
                    history,
                    subject,
                    here,
                    day,
                    around.addresses(),
                    around.sketches(),
                    holds,
                    unlabelled.includes(history));
            parts.put(
                    id,
                    new Part(
                            history.sowing().grower().memberId(),
                            item,
                            here,
                            subject.moreToCome().isPresent()));
        }
        return parts;
    }
}
