package warmshelf.check;

import static warmshelf.db.generated.Tables.ACCESS_LINK;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.BOARD_LOOK;
import static warmshelf.db.generated.Tables.CALENDAR_ADDRESS;
import static warmshelf.db.generated.Tables.CALENDAR_EVENT;
import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.DUTY_AWAY;
import static warmshelf.db.generated.Tables.DUTY_STAND_IN;
import static warmshelf.db.generated.Tables.DUTY_SWAP;
import static warmshelf.db.generated.Tables.DUTY_WILLING;
import static warmshelf.db.generated.Tables.FREED_SPACE;
import static warmshelf.db.generated.Tables.LETTER;
import static warmshelf.db.generated.Tables.LOT_REQUEST;
import static warmshelf.db.generated.Tables.MEMBER_SESSION;
import static warmshelf.db.generated.Tables.NEWS;
import static warmshelf.db.generated.Tables.PASSKEY;
import static warmshelf.db.generated.Tables.PASSKEY_CHALLENGE;
import static warmshelf.db.generated.Tables.PHOTO;
import static warmshelf.db.generated.Tables.PROGRAM_ANSWER;
import static warmshelf.db.generated.Tables.PROGRAM_TOKEN;
import static warmshelf.db.generated.Tables.PUSH_ADDRESS;
import static warmshelf.db.generated.Tables.PUSH_NOTICE;
import static warmshelf.db.generated.Tables.SHORT_CODE;
import static warmshelf.db.generated.Tables.SOWING_MESSAGE;
import static warmshelf.db.generated.Tables.SOWING_RESULT;
import static warmshelf.db.generated.Tables.STAY_MOVE;
import static warmshelf.db.generated.Tables.SUBMISSION;
import static warmshelf.db.generated.Tables.SUPPLY_PROMISE;
import static warmshelf.db.generated.Tables.SURPLUS_OFFER;
import static warmshelf.db.generated.Tables.SURPLUS_TAKING;
import static warmshelf.db.generated.Tables.TABLET;
import static warmshelf.db.generated.Tables.WITHDRAWAL;
import static warmshelf.db.generated.Tables.WITHDRAWAL_STAY;

import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.jooq.Table;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.RackHolds;
import warmshelf.db.Database;
import warmshelf.db.KeptUntilWritten;
import warmshelf.sowing.NotedProblem;
import warmshelf.sowing.ProblemStore;

/**
 * Puts the round of a day together from what the stores hold. The whole round is kept sowing by sowing: what is written to a
 * sowing renews that one alone, and what has nothing to do with the round renews nothing. A member's own round is read for itself
 * and never waits for the whole one. Where other processes share the database, what they write to sowings is looked for after two
 * seconds, and what hardly ever changes, such as names, after half a minute.
 */
public final class RoundStore {
    private static final long KEPT_NANOS = Duration.ofSeconds(2).toNanos();
    private static final long SHARED_WHOLE_NANOS = Duration.ofSeconds(30).toNanos();

    /** What is written here is nothing to a sowing's part in the round, or is asked for anew each time. */
    private static final List<Table<?>> ELSEWHERE = List.of(
            ACCESS_LINK,
            AUDIT_LINE,
            BOARD_LOOK,
            CALENDAR_ADDRESS,
            CALENDAR_EVENT,
            FREED_SPACE,
            LETTER,
            LOT_REQUEST,
            MEMBER_SESSION,
            NEWS,
            PASSKEY,
            PASSKEY_CHALLENGE,
            PHOTO,
            PROGRAM_ANSWER,
            PROGRAM_TOKEN,
            PUSH_ADDRESS,
            PUSH_NOTICE,
            SHORT_CODE,
            SOWING_MESSAGE,
            SOWING_RESULT,
            STAY_MOVE,
            SUBMISSION,
            SUPPLY_PROMISE,
            SURPLUS_OFFER,
            SURPLUS_TAKING,
            TABLET,
            WITHDRAWAL,
            WITHDRAWAL_STAY);

    private static final List<Table<?>> DUTIES = List.of(DUTY, DUTY_AWAY, DUTY_STAND_IN, DUTY_SWAP, DUTY_WILLING);
    private static final List<Table<?>> NOT_AROUND = join(RoundStampStore.STAMPED, ELSEWHERE);
    private static final List<Table<?>> NOT_IN_ALL = join(NOT_AROUND, DUTIES);

    private final Database database;
    private final RoundItemStore items;
    private final RoundStampStore stamps;
    private final KeptUntilWritten<Asked, RoundItemStore.Own> own;
    private volatile @Nullable KeptAround around;
    private volatile @Nullable Kept kept;

    public RoundStore(Database database, RoundItemStore items) {
        this.database = database;
        this.items = items;
        this.stamps = new RoundStampStore(database);
        this.own =
                new KeptUntilWritten<>(database, asked -> items.own(asked.member(), asked.day(), around(asked.day())));
    }

    private static List<Table<?>> join(List<Table<?>> some, List<Table<?>> more) {
        return Stream.concat(some.stream(), more.stream()).toList();
    }

    private record Asked(UUID member, LocalDate day) {}

    /** Everything due on a day, with every mat that is warm. */
    public Round whole(LocalDate day) {
        return kept(day).whole();
    }

    /** What is due on a day at one member's sowings. */
    public Round of(UUID member, LocalDate day) {
        return own.get(new Asked(member, day)).round();
    }

    /** Who looks where on a day, and who on the day after. */
    Watch watch(LocalDate day) {
        return around(day).watch();
    }

    /** The problems at a member's sowings that wait for an answer, the one noted last first. */
    List<NotedProblem> unanswered(UUID grower, LocalDate day) {
        return own.get(new Asked(grower, day)).unanswered();
    }

    /** The problems at everybody else's sowings that wait for an answer. */
    List<NotedProblem> unansweredOfOthers(UUID member, LocalDate day) {
        return kept(day).unanswered().stream()
                .filter(problem -> !problem.sowing().grower().memberId().equals(member))
                .toList();
    }

    /** The racks that are held and concern a member: all of them concern whoever asks for everything. */
    List<HeldRack> held(UUID member, boolean all, LocalDate day) {
        return own.get(new Asked(member, day)).held().stream()
                .filter(rack -> all || rack.concerned().contains(member))
                .toList();
    }

    /** What was answered to the problems that a member noted, until they put it away. */
    List<ProblemStore.Told> told(UUID noter, LocalDate day) {
        return own.get(new Asked(noter, day)).told();
    }

    /** Who looks today and who tomorrow, in walking order of the sites. */
    record Watch(List<TodayStore.OnDuty> today, List<TodayStore.OnDuty> tomorrow) {}

    private record KeptAround(LocalDate day, long writes, long sinceNanos, RoundItemStore.Around around) {}

    private RoundItemStore.Around around(LocalDate day) {
        KeptAround last = around;
        long writes = database.writesBeside(NOT_AROUND);
        if (last != null && last.day().equals(day) && last.writes() == writes && !isOld(last.sinceNanos())) {
            return last.around();
        }
        KeptAround read = new KeptAround(day, writes, System.nanoTime(), items.around(day));
        around = read;
        return read.around();
    }

    private boolean isOld(long sinceNanos) {
        return database.isShared() && System.nanoTime() - sinceNanos >= KEPT_NANOS;
    }

    private Kept kept(LocalDate day) {
        long asked = System.nanoTime();
        long writes = database.writes();
        Kept last = kept;
        return last != null && isFresh(last, day, writes, asked) ? last : readOnce(day, writes, asked);
    }

    /**
     * Whoever comes while the round is being renewed waits for that, rather than renewing it once more. A round that somebody began
     * to read after one had asked will do, whatever was written since: else all who wait would read it anew, one after another,
     * while others write.
     */
    private synchronized Kept readOnce(LocalDate day, long writes, long asked) {
        Kept last = kept;
        if (last != null && isFresh(last, day, writes, asked)) {
            return last;
        }
        Kept read = read(last, day);
        kept = read;
        return read;
    }

    /** Whether a round holds all that had been written when it was asked for. */
    private boolean isFresh(Kept last, LocalDate day, long writes, long asked) {
        return last.day().equals(day)
                && last.writes() >= writes
                && (last.sinceNanos() - asked >= 0 || !isOld(last.sinceNanos()));
    }

    private Kept read(@Nullable Kept last, LocalDate day) {
        // Counted before reading: what is written meanwhile makes this round stale for whoever asks later.
        long writes = database.writes();
        long now = System.nanoTime();
        long beside = database.writesBeside(NOT_IN_ALL);
        long taught = database.writesTo(List.of(SOWING_RESULT));
        RackHolds holds = items.holds();
        Kept base = last != null
                        && last.day().equals(day)
                        && last.beside() == beside
                        && last.holds().equals(holds)
                        && !(database.isShared() && now - last.wholeNanos() >= SHARED_WHOLE_NANOS)
                ? last
                : null;
        RoundStampStore.Stamps told = stamps.read(base == null || isOld(base.sinceNanos()) ? null : base.stamps());
        RoundItemStore.Around standing = around(day);
        Map<UUID, RoundItemStore.Part> parts =
                base == null ? items.all(day, standing, holds) : renewed(base, told, base.taught() != taught, standing);
        return new Kept(
                writes,
                now,
                base == null ? now : base.wholeNanos(),
                beside,
                taught,
                day,
                holds,
                told,
                parts,
                Round.of(RoundItemStore.items(parts.values()), standing.addresses(), items.mats(day)),
                RoundItemStore.unanswered(parts.values()));
    }

    private Map<UUID, RoundItemStore.Part> renewed(
            Kept last, RoundStampStore.Stamps told, boolean taught, RoundItemStore.Around standing) {
        Set<UUID> changed = new HashSet<>(told.changedSince(last.stamps()));
        if (taught) {
            // What else is known of its lot now tells how likely late seed still comes.
            last.parts().forEach((id, part) -> {
                if (part.late()) {
                    changed.add(id);
                }
            });
        }
        Map<UUID, RoundItemStore.Part> parts = new HashMap<>(last.parts());
        parts.keySet().retainAll(told.underWay());
        parts.keySet().removeAll(changed);
        changed.retainAll(told.underWay());
        parts.putAll(items.some(changed, last.day(), standing, last.holds()));
        return parts;
    }

    /**
     * @param wholeNanos when all of it was read
     * @param beside how much had been written of what no stamp tells
     * @param taught how much of what sowings taught
     */
    private record Kept(
            long writes,
            long sinceNanos,
            long wholeNanos,
            long beside,
            long taught,
            LocalDate day,
            RackHolds holds,
            RoundStampStore.Stamps stamps,
            Map<UUID, RoundItemStore.Part> parts,
            Round whole,
            List<NotedProblem> unanswered) {}
}
