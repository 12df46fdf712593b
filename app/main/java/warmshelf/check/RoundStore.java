package warmshelf.check;

import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.RackHoldStore;
import warmshelf.allocation.RackHolds;
import warmshelf.db.Database;
import warmshelf.label.LabelRunStore;
import warmshelf.sowing.History;
import warmshelf.sowing.HistoryStore;
import warmshelf.sowing.NotedProblem;
import warmshelf.sowing.ProblemStore;

/**
 * Puts the round of a day together from what the stores hold. Everyone's page is cut from one round of the whole group,
 * which is kept until this process writes something and, where other processes share the database, for two seconds at most.
 */
public final class RoundStore {
    private static final long KEPT_NANOS = Duration.ofSeconds(2).toNanos();

    private final Database database;
    private final HistoryStore histories;
    private final TodayStore today;
    private final WalkStore walk;
    private final RoundReader reader;
    private final ProblemStore problems;
    private final HeldRackStore racks;
    private final LabelRunStore labels;
    private volatile @Nullable Kept kept;

    public RoundStore(
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

    /** Everything due on a day, with every mat that is warm. */
    public Round whole(LocalDate day) {
        return kept(day).whole();
    }

    /** What is due on a day at one member's sowings. */
    public Round of(UUID member, LocalDate day) {
        Kept now = kept(day);
        return Round.of(now.itemsOf().getOrDefault(member, List.of()), now.addresses(), Map.of());
    }

    /** Who looks where on a day, and who on the day after. */
    Watch watch(LocalDate day) {
        return kept(day).watch();
    }

    /** The problems at a member's sowings that wait for an answer, the one noted last first. */
    List<NotedProblem> unanswered(UUID grower, LocalDate day) {
        return kept(day).unanswered().stream()
                .filter(problem -> problem.sowing().grower().memberId().equals(grower))
                .toList();
    }

    /** The problems at everybody else's sowings that wait for an answer. */
    List<NotedProblem> unansweredOfOthers(UUID member, LocalDate day) {
        return kept(day).unanswered().stream()
                .filter(problem -> !problem.sowing().grower().memberId().equals(member))
                .toList();
    }

    /** The racks that are held and concern a member: all of them concern whoever asks for everything. */
    List<HeldRack> held(UUID member, boolean all, LocalDate day) {
        return kept(day).held().stream()
                .filter(rack -> all || rack.concerned().contains(member))
                .toList();
    }

    /** What was answered to the problems that a member noted, until they put it away. */
    List<ProblemStore.Told> told(UUID noter, LocalDate day) {
        return kept(day).told().getOrDefault(noter, List.of());
    }

    /** Who looks today and who tomorrow, in walking order of the sites. */
    record Watch(List<TodayStore.OnDuty> today, List<TodayStore.OnDuty> tomorrow) {}

    private Kept kept(LocalDate day) {
        Asked asked = new Asked(day, database.writes(), System.nanoTime());
        Kept last = kept;
        return last != null && isFresh(last, asked) ? last : readOnce(asked);
    }

    /**
     * Whoever comes while the round is being read waits for it, rather than reading it once more. A round that somebody began to
     * read after one had asked will do, whatever was written since: else all who wait would read it anew, one after another,
     * while others write.
     */
    private synchronized Kept readOnce(Asked asked) {
        Kept last = kept;
        if (last != null && isFresh(last, asked)) {
            return last;
        }
        // Counted before reading: what is written meanwhile makes this round stale for whoever asks later.
        Kept read = read(asked.day(), database.writes(), System.nanoTime());
        kept = read;
        return read;
    }

    /**
     * @param writes how much had been written by then
     */
    private record Asked(LocalDate day, long writes, long atNanos) {}

    /** Whether a round holds all that had been written when it was asked for. */
    private boolean isFresh(Kept last, Asked asked) {
        boolean current = last.day().equals(asked.day()) && last.writes() >= asked.writes();
        return current
                && (!database.isShared()
                        || last.sinceNanos() - asked.atNanos() >= 0
                        || System.nanoTime() - last.sinceNanos() < KEPT_NANOS);
    }

    private Kept read(LocalDate day, long writes, long sinceNanos) {
        Map<UUID, PlaceAddress> addresses = walk.addresses();
        Map<UUID, RackSketch> sketches = RackSketch.byPlace(addresses.values());
        Map<UUID, Round.MatReading> mats = new HashMap<>();
        today.mats(day).forEach((id, mat) -> mats.put(id, Round.MatReading.of(mat)));
        List<History> underWay = histories.underWay();
        Map<UUID, List<NotedProblem>> open = problems.open(underWay);
        RackHolds holds = RackHoldStore.read(database.sql());
        LabelRunStore.Unlabelled unlabelled = labels.unlabelled();
        List<Round.Item> items = underWay.stream()
                .map(history -> Round.item(
                        history,
                        reader.subject(history, day).among(addresses),
                        open.getOrDefault(history.sowing().id(), List.of()),
                        day,
                        addresses,
                        sketches,
                        holds,
                        unlabelled.includes(history)))
                .filter(Objects::nonNull)
                .toList();
        Watch watch = new Watch(today.onDuty(day), today.onDuty(day.plusDays(1)));
        Map<UUID, List<Round.Item>> itemsOf = items.stream()
                .collect(Collectors.groupingBy(
                        item -> item.subject().sowing().grower().memberId()));
        List<NotedProblem> unanswered = NotedProblem.unanswered(open.values());
        Round whole = Round.of(items, addresses, mats);
        return new Kept(
                writes, sinceNanos, day, addresses, itemsOf, whole, watch, unanswered, problems.told(), racks.on(day));
    }

    private record Kept(
            long writes,
            long sinceNanos,
            LocalDate day,
            Map<UUID, PlaceAddress> addresses,
            Map<UUID, List<Round.Item>> itemsOf,
            Round whole,
            Watch watch,
            List<NotedProblem> unanswered,
            Map<UUID, List<ProblemStore.Told>> told,
            List<HeldRack> held) {}
}
