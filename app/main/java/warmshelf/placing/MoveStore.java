package warmshelf.placing;

import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.MatDayStore;
import warmshelf.allocation.Obstacle;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.QuarterDayStore;
import warmshelf.allocation.RackHold;
import warmshelf.allocation.RackHoldStore;
import warmshelf.allocation.RequestStore;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.allocation.StayRelayStore;
import warmshelf.allocation.StayStore;
import warmshelf.allocation.WarmDays;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.news.NewsBookStore;
import warmshelf.news.NewsEvent;
import warmshelf.news.NewsKind;
import warmshelf.words.Message;

/**
 * Moves stays, takes moves back and frees places. Each is one transaction that holds the sowing, then the mats in the order
 * of their ids, then the stay: the same order everywhere, so that two people never wait for each other.
 */
public final class MoveStore {
    private final DSLContext sql;
    private final Audit audit;
    private final StayStore stays;
    private final StayRelayStore relays;
    private final RequestStore requests;
    private final NewsBookStore news;

    public MoveStore(Database database, Audit audit, StayStore stays, RequestStore requests) {
        this.sql = database.sql();
        this.audit = audit;
        this.stays = stays;
        this.relays = new StayRelayStore(stays);
        this.requests = requests;
        this.news = new NewsBookStore(audit);
    }

    /**
     * Moves a stay. What lies there since before today is carried: its stay ends today and another begins. A place under a
     * light that is booked for its end follows where it can.
     *
     * @param seen the stay as it was looked at
     * @param warm the set-points at the new place; null under a light
     * @return the stay that lies at the new place
     */
    public Decision<UUID> move(LyingStay seen, PlaceAndDays spot, @Nullable WarmDays warm, LocalDate today, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> move(inside.dsl(), seen, spot, warm, today, by)));
    }

    /**
     * A move to be made together with others.
     *
     * @param seen the stay as it was looked at
     * @param warm the set-points at the new place; null under a light
     */
    public record Change(
            LyingStay seen, PlaceAndDays spot, @Nullable WarmDays warm) {}

    /** Moves several stays, all or none, each judged after those before it. */
    public Decision<Integer> moveAll(List<Change> changes, LocalDate today, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            // As for one move: the sowings, then the mats in order, so that two people never wait for each other.
            changes.stream()
                    .map(change -> change.seen().stay().sowingId())
                    .sorted()
                    .forEach(sowing -> holdSowing(tx, sowing));
            changes.stream()
                    .flatMap(change -> Stream.of(
                            change.seen().stay().placeId(), change.spot().placeId()))
                    .map(place -> matOf(tx, place))
                    .flatMap(Optional::stream)
                    .distinct()
                    .sorted()
                    .forEach(mat -> MatDayStore.lock(tx, mat));
            changes.forEach(change -> move(tx, change.seen(), change.spot(), change.warm(), today, by));
            return changes.size();
        }));
    }

    private UUID move(
            DSLContext tx, LyingStay seen, PlaceAndDays spot, @Nullable WarmDays warm, LocalDate today, UUID by) {
        Stay stay = hold(tx, seen, spot.placeId());
        refuseEnded(seen, today);
        refuseHeld(tx, seen, spot.placeId(), today);
        LyingStay before = read(seen, stay);
        UUID moved =
                seen.isCarriedOn(today) ? relays.carry(tx, stay, spot, warm, by) : relays.relay(tx, stay, spot, warm);
        stays.followUnderLight(tx, stay.sowingId(), stay.to(), spot.to(), by);
        keep(tx, before, moved, warm, null, by);
        return moved;
    }

    /** Whether the last move of a stay is this person's own, nothing else changed since, and it fits where it lay. */
    public boolean mayTakeBack(LyingStay lying, LocalDate today, UUID by) {
        return undoable(sql, lying, today, by)
                .filter(last -> fitsBack(lying.stay(), last))
                .filter(last ->
                        rackHeld(sql, lying, last.before().placeId(), today).isEmpty())
                .isPresent();
    }

    private boolean fitsBack(Stay stay, MoveBookStore.Kept last) {
        PlaceAndDays back = backTo(stay, last);
        WarmDays warm = relays.warmElsewhere(sql, stay, back, last.celsiusBefore());
        return relays.obstacles(sql, stay, back, warm).isEmpty();
    }

    /** What has been carried lies at the old place until today, so only the rest of its days is laid there again. */
    private static PlaceAndDays backTo(Stay stay, MoveBookStore.Kept last) {
        PlaceAndDays before = last.before();
        return last.isCarried() ? new PlaceAndDays(before.placeId(), before.slot(), stay.from(), before.to()) : before;
    }

    /**
     * Takes back one's own last move of a stay.
     *
     * @return the stay that lies at the old place again
     */
    public Decision<UUID> takeBack(LyingStay seen, LocalDate today, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            MoveBookStore.Kept last = undoable(tx, seen, today, by)
                    .orElseThrow(() -> Declined.overtaken(new PlacingRefusal.NoMoveToTakeBack()));
            Stay stay = hold(tx, seen, last.before().placeId());
            refuseHeld(tx, seen, last.before().placeId(), today);
            LyingStay before = read(seen, stay);
            if (last.isCarried()) {
                Stay old = StayBookStore.find(tx, last.stayId())
                        .orElseThrow(() -> Declined.overtaken(new PlacingRefusal.StayEnded()));
                stays.end(tx, stay, stay.from(), by);
                stays.extend(tx, old, last.before().to(), by);
            } else {
                relays.relay(
                        tx, stay, last.before(), relays.warmElsewhere(tx, stay, last.before(), last.celsiusBefore()));
            }
            stays.followUnderLight(tx, stay.sowingId(), stay.to(), last.before().to(), by);
            keep(tx, before, last.stayId(), warmOf(tx, last.stayId()), last.id(), by);
            return last.stayId();
        }));
    }

    private Optional<MoveBookStore.Kept> undoable(DSLContext from, LyingStay lying, LocalDate today, UUID by) {
        Stay stay = lying.stay();
        return MoveBookStore.last(from, stay.id(), stay.slot().quarters())
                .filter(last -> last.movedBy().equals(by) && !last.takesBack())
                .filter(last -> last.versionAfter() == stay.version())
                // What has been carried or sown since lies where it lies: that is a new move, not an undo.
                .filter(last -> last.isCarried()
                        ? stay.from().equals(today)
                        : !lying.isBegunBy(today)
                                || (last.before().from().equals(stay.from())
                                        && stay.from().equals(today)));
    }

    /**
     * Frees the place: what has not begun is taken off the board, what lies there ends today; its request waits again,
     * and a place under a light that is booked for its end is free too.
     */
    public Decision<UUID> free(LyingStay seen, String reason, LocalDate today, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            Stay stay = hold(tx, seen, seen.stay().placeId());
            refuseEnded(seen, today);
            stays.end(tx, stay, seen.isBegunBy(today) ? today : stay.from(), by);
            if (stay.isOnMat()) {
                // Nothing comes off this mat any more, so nothing goes under the light from here.
                StayBookStore.ofSowing(tx, stay.sowingId()).stream()
                        .filter(booked -> !booked.isOnMat() && booked.from().equals(stay.to()))
                        .forEach(booked -> stays.end(tx, booked, booked.from(), by));
            }
            audit.write(tx, by, "free place", "stay", stay.id(), stay.where() + ": " + reason);
            Optional<SpaceRequest> request = requests.find(tx, stay.sowingId())
                    .filter(found -> stay.isOnMat() && found.state() == SpaceRequest.State.PLACED);
            request.map(placed -> requests.decide(tx, placed, SpaceRequest.State.WAITING, reason, by))
                    .flatMap(Decision::refusal)
                    .ifPresent(overtaken -> {
                        throw Declined.overtaken(new PlacingRefusal.DecidedByOthers());
                    });
            return stay.id();
        }));
    }

    /** Whether there ever was a stay of that id, cancelled ones included. */
    public boolean knows(UUID stay) {
        return sql.fetchExists(STAY, STAY.ID.eq(stay));
    }

    /** The stay that goes on where something was carried to from one that has ended. */
    public Optional<UUID> goesOnAs(UUID stay) {
        return MoveBookStore.goesOnAs(sql, stay);
    }

    /** What somebody did to a stay since a version of it was looked at. */
    public Message whatChanged(UUID stay, int seenVersion) {
        return MoveBookStore.whatChanged(sql, stay, seenVersion, audit.now());
    }

    private Stay hold(DSLContext tx, LyingStay lying, UUID wantedPlace) {
        Stay seen = lying.stay();
        if (LyingStore.isSown(holdSowing(tx, seen.sowingId())) != lying.sown()) {
            throw Declined.overtaken(new PlacingRefusal.EntryMade());
        }
        Stream.of(seen.placeId(), wantedPlace)
                .map(place -> matOf(tx, place))
                .flatMap(Optional::stream)
                .distinct()
                .sorted()
                .forEach(mat -> MatDayStore.lock(tx, mat));
        tx.select(STAY.ID).from(STAY).where(STAY.ID.eq(seen.id())).forUpdate().fetch();
        return StayBookStore.find(tx, seen.id())
                .filter(now -> now.version() == seen.version())
                .orElseThrow(() ->
                        Declined.overtaken(MoveBookStore.whatChanged(tx, seen.id(), seen.version(), audit.now())));
    }

    /** Its stage. */
    private static String holdSowing(DSLContext tx, UUID sowing) {
        return tx.select(SOWING.STAGE)
                .from(SOWING)
                .where(SOWING.ID.eq(sowing))
                .forUpdate()
                .fetchSingle(SOWING.STAGE);
    }

    private static Optional<UUID> matOf(DSLContext tx, UUID place) {
        return tx.select(PLACE.MAT_ID).from(PLACE).where(PLACE.ID.eq(place)).fetchOptional(PLACE.MAT_ID);
    }

    private static void refuseEnded(LyingStay seen, LocalDate today) {
        if (seen.isOverBy(today)) {
            throw Declined.refused(new PlacingRefusal.StayEnded());
        }
    }

    /** What has not begun lies nowhere yet, and carries nothing along. */
    private static Optional<RackHold> rackHeld(DSLContext from, LyingStay lying, UUID place, LocalDate today) {
        return lying.isBegunBy(today)
                ? RackHoldStore.read(from).keepsIn(lying.stay().placeId(), place)
                : Optional.empty();
    }

    private static void refuseHeld(DSLContext tx, LyingStay lying, UUID place, LocalDate today) {
        rackHeld(tx, lying, place, today).ifPresent(hold -> {
            throw Declined.refused(new Obstacle.RackIsHeld(hold));
        });
    }

    private static LyingStay read(LyingStay seen, Stay stay) {
        return new LyingStay(
                stay,
                seen.what(),
                seen.grower(),
                seen.sown(),
                seen.matId(),
                seen.warm(),
                seen.band(),
                seen.needsLight());
    }

    private static @Nullable WarmDays warmOf(DSLContext tx, UUID id) {
        Stay stay = StayBookStore.find(tx, id).orElseThrow();
        return stay.isOnMat() ? QuarterDayStore.warmthOf(tx, stay).days() : null;
    }

    private void keep(
            DSLContext tx, LyingStay before, UUID moved, @Nullable WarmDays warm, @Nullable UUID takesBack, UUID by) {
        Stay now = StayBookStore.find(tx, moved).orElseThrow();
        LyingStay after = new LyingStay(
                now,
                before.what(),
                before.grower(),
                before.sown(),
                before.matId(),
                warm,
                before.band(),
                before.needsLight());
        MoveBookStore.keep(tx, before, after, takesBack, by, audit.now());
        audit.write(
                tx,
                by,
                takesBack == null ? "move stay" : "take move back",
                "stay",
                now.id(),
                String.join(" to ", List.of("from " + words(before), words(after))));
        news.tellGrower(tx, NewsEvent.ofSowing(NewsKind.MOVED, now.sowingId(), by));
    }

    private static String words(LyingStay lying) {
        Stay stay = lying.stay();
        return "%s, %s to before %s%s"
                .formatted(
                        stay.where(), stay.from(), stay.to(), lying.warm() == null ? "" : " at " + words(lying.warm()));
    }

    private static String words(WarmDays warm) {
        return warm.runs().stream()
                .map(run -> WarmDays.written(run.celsius()) + " C"
                        + (run.from().equals(warm.from()) ? "" : " from " + run.from()))
                .collect(Collectors.joining(", "));
    }
}
