package warmshelf.placing;

import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.STAY;
import static warmshelf.db.generated.Tables.STAY_MOVE;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.allocation.Stay;

/** Keeps the moves of stays, and tells what became of one since somebody looked at it. */
final class MoveBookStore {
    private MoveBookStore() {}

    /** A move as it was kept. */
    record Kept(
            UUID id,
            UUID stayId,
            UUID newStayId,
            PlaceAndDays before,
            @Nullable Double celsiusBefore,
            int versionAfter,
            boolean takesBack,
            UUID movedBy) {

        /** What lay there was carried: the old stay ended and a new one began. */
        boolean isCarried() {
            return !stayId.equals(newStayId);
        }
    }

    static void keep(
            DSLContext tx, LyingStay before, LyingStay after, @Nullable UUID takesBack, UUID by, OffsetDateTime at) {
        Stay old = before.stay();
        Stay now = after.stay();
        tx.insertInto(STAY_MOVE)
                .set(STAY_MOVE.ID, UUID.randomUUID())
                .set(STAY_MOVE.STAY_ID, old.id())
                .set(STAY_MOVE.NEW_STAY_ID, now.id())
                .set(STAY_MOVE.OLD_PLACE_ID, old.placeId())
                .set(STAY_MOVE.OLD_FIRST_QUARTER, old.slot().firstQuarter())
                .set(STAY_MOVE.OLD_FROM_DAY, old.from())
                .set(STAY_MOVE.OLD_TO_DAY, old.to())
                .set(STAY_MOVE.OLD_CELSIUS, before.celsius())
                .set(STAY_MOVE.NEW_PLACE_ID, now.placeId())
                .set(STAY_MOVE.NEW_FIRST_QUARTER, now.slot().firstQuarter())
                .set(STAY_MOVE.NEW_FROM_DAY, now.from())
                .set(STAY_MOVE.NEW_TO_DAY, now.to())
                .set(STAY_MOVE.NEW_CELSIUS, after.celsius())
                .set(STAY_MOVE.VERSION_AFTER, now.version())
                .set(STAY_MOVE.TAKES_BACK, takesBack)
                .set(STAY_MOVE.MOVED_BY, by)
                .set(STAY_MOVE.MOVED_AT, at)
                .execute();
    }

    /** The last move that left a stay where it lies. */
    static Optional<Kept> last(DSLContext sql, UUID stay, int quarters) {
        return sql.selectFrom(STAY_MOVE)
                .where(STAY_MOVE.NEW_STAY_ID.eq(stay))
                .orderBy(STAY_MOVE.KEPT_ORDER.desc())
                .limit(1)
                .fetchOptional(move -> new Kept(
                        move.getId(),
                        move.getStayId(),
                        move.getNewStayId(),
                        new PlaceAndDays(
                                move.getOldPlaceId(),
                                new Slot(move.getOldFirstQuarter(), quarters),
                                move.getOldFromDay(),
                                move.getOldToDay()),
                        move.getOldCelsius(),
                        move.getVersionAfter(),
                        move.getTakesBack() != null,
                        move.getMovedBy()));
    }

    /** The stay that goes on where something was carried to from this one. */
    static Optional<UUID> goesOnAs(DSLContext sql, UUID stay) {
        return sql.select(STAY_MOVE.NEW_STAY_ID)
                .from(STAY_MOVE)
                .where(STAY_MOVE.STAY_ID.eq(stay), STAY_MOVE.NEW_STAY_ID.ne(stay))
                .orderBy(STAY_MOVE.KEPT_ORDER.desc())
                .limit(1)
                .fetchOptional(STAY_MOVE.NEW_STAY_ID);
    }

    /** What somebody did to a stay since a version of it was looked at. */
    static StayChange whatChanged(DSLContext sql, UUID stay, int seenVersion, OffsetDateTime now) {
        return sql.select(STAY_MOVE.asterisk(), STAY.QUARTERS, MEMBER.CALLED, PLACE.NUMBER, MAT.NAME)
                .from(STAY_MOVE)
                .join(STAY)
                .on(STAY.ID.eq(STAY_MOVE.NEW_STAY_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(STAY_MOVE.MOVED_BY))
                .join(PLACE)
                .on(PLACE.ID.eq(STAY_MOVE.NEW_PLACE_ID))
                .leftJoin(MAT)
                .on(MAT.ID.eq(PLACE.MAT_ID))
                .where(STAY_MOVE
                        .NEW_STAY_ID
                        .eq(stay)
                        .and(STAY_MOVE.VERSION_AFTER.gt(seenVersion))
                        .or(STAY_MOVE.STAY_ID.eq(stay).and(STAY_MOVE.NEW_STAY_ID.ne(stay))))
                .orderBy(STAY_MOVE.KEPT_ORDER.desc())
                .limit(1)
                .<StayChange>fetchOptional(move -> moved(move, now))
                .orElseGet(() -> otherwise(sql, stay, now));
    }

    private static StayChange moved(Record move, OffsetDateTime now) {
        return new StayChange.Moved(
                move.get(MEMBER.CALLED),
                move.get(STAY_MOVE.TAKES_BACK) != null,
                move.get(MAT.NAME),
                move.get(PLACE.NUMBER),
                new Slot(move.get(STAY_MOVE.NEW_FIRST_QUARTER), move.get(STAY.QUARTERS)),
                move.get(STAY_MOVE.NEW_FROM_DAY),
                Duration.between(move.get(STAY_MOVE.MOVED_AT), now));
    }

    private static StayChange.Kind done(String action) {
        return switch (action) {
            case "extend stay" -> StayChange.Kind.LIES_LONGER;
            case "begin stay earlier" -> StayChange.Kind.BEGINS_EARLIER;
            case "begin stay later" -> StayChange.Kind.BEGINS_LATER;
            default -> StayChange.Kind.ENDED;
        };
    }

    private static StayChange otherwise(DSLContext sql, UUID stay, OffsetDateTime now) {
        return sql.select(AUDIT_LINE.ACTION, AUDIT_LINE.AT, MEMBER.CALLED)
                .from(AUDIT_LINE)
                .join(MEMBER)
                .on(MEMBER.ID.eq(AUDIT_LINE.MEMBER_ID))
                .where(AUDIT_LINE.SUBJECT.eq("stay"), AUDIT_LINE.SUBJECT_ID.eq(stay.toString()))
                .orderBy(AUDIT_LINE.AT.desc())
                .limit(1)
                .<StayChange>fetchOptional(line -> new StayChange.Changed(
                        line.value3(), done(line.value1()), Duration.between(line.value2(), now)))
                .orElseGet(StayChange.Unknown::new);
    }
}
