package warmshelf.leaving;

import static warmshelf.db.generated.Tables.LEAVING;
import static warmshelf.db.generated.Tables.LEAVING_THING;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.SOWING;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.db.generated.tables.records.LeavingRecord;
import warmshelf.db.generated.tables.records.LeavingThingRecord;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.duty.DutyStore;
import warmshelf.duty.Turn;
import warmshelf.group.Member;
import warmshelf.group.MemberStore;
import warmshelf.sowing.WithdrawalStore;
import warmshelf.surplus.SurplusStore;

/** Takes a leaving back: whatever nobody has touched since returns to whoever left. */
final class LeavingUndoStore {
    /** How long a leaving can be taken back. */
    static final Duration UNDOABLE = Duration.ofDays(1);

    private final DSLContext sql;
    private final Audit audit;
    private final MemberStore members;
    private final DutyStore duties;
    private final WithdrawalStore withdrawals;
    private final SurplusStore surplus;

    LeavingUndoStore(
            Database database,
            Audit audit,
            MemberStore members,
            DutyStore duties,
            WithdrawalStore withdrawals,
            SurplusStore surplus) {
        this.sql = database.sql();
        this.audit = audit;
        this.members = members;
        this.duties = duties;
        this.withdrawals = withdrawals;
        this.surplus = surplus;
    }

    /** The members whose leaving can still be taken back. */
    Set<UUID> undoable() {
        return sql.select(LEAVING.MEMBER_ID).from(LEAVING).where(open()).fetchSet(LEAVING.MEMBER_ID);
    }

    /**
     * What came of taking a leaving back.
     *
     * @param returned how many things are the member's again
     * @param others how many somebody else has changed since, so that they stay as they are
     */
    record Undone(int returned, int others) {}

    /** Takes a member's last leaving back; a no when it is too old, taken back already, or there is none. */
    Decision<Undone> undo(Member member, LocalDate today, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            LeavingRecord leaving = tx.selectFrom(LEAVING)
                    .where(LEAVING.MEMBER_ID.eq(member.id()), open())
                    .orderBy(LEAVING.MADE_AT.desc())
                    .limit(1)
                    .forUpdate()
                    .fetchOne();
            if (leaving == null) {
                throw Declined.overtaken(new LeavingRefusal.NotUndoable(member.name()));
            }
            members.comeBack(tx, member.id(), leaving.getRoleBefore().equals("coordinator"), by);
            leaving.setUndoneBy(by);
            leaving.setUndoneAt(audit.now());
            leaving.store();
            List<LeavingThingRecord> things = tx.selectFrom(LEAVING_THING)
                    .where(LEAVING_THING.LEAVING_ID.eq(leaving.getId()))
                    .fetch();
            int returned = (int) things.stream()
                    .filter(thing -> giveBack(tx, leaving, thing, today, by))
                    .count();
            // Seedlings that they were to fetch had become free for others.
            SurplusStore.TakenAgain seedlings = surplus.takeAllAgain(tx, member.id(), leaving.getMadeAt(), by);
            return new Undone(returned + seedlings.taken(), things.size() - returned + seedlings.lost());
        }));
    }

    private Condition open() {
        return LEAVING.UNDONE_AT.isNull().and(LEAVING.MADE_AT.gt(audit.now().minus(UNDOABLE)));
    }

    private boolean giveBack(DSLContext tx, LeavingRecord leaving, LeavingThingRecord thing, LocalDate today, UUID by) {
        return switch (LeftKind.named(thing.getKind())) {
            case TRAY, REQUEST -> giveBackSowing(tx, leaving, thing, by);
            case TURN -> giveBackTurn(tx, leaving, thing, today, by);
            case LOT -> giveBackLot(tx, leaving, thing, by);
        };
    }

    private boolean giveBackSowing(DSLContext tx, LeavingRecord leaving, LeavingThingRecord thing, UUID by) {
        UUID sowing = UUID.fromString(thing.getThing());
        return switch (fate(thing)) {
            case KEPT -> true;
            case WITHDRAWN -> withdrawals.takeBack(tx, sowing, by) instanceof Decision.Done;
            default -> {
                int changed = tx.update(SOWING)
                        .set(SOWING.MEMBER_ID, leaving.getMemberId())
                        .set(SOWING.VERSION, SOWING.VERSION.plus(1))
                        .where(SOWING.ID.eq(sowing), SOWING.MEMBER_ID.eq(leaving.getReceiverId()))
                        .execute();
                audit.write(tx, by, "give back", "sowing", sowing, String.valueOf(leaving.getMemberId()));
                yield changed == 1;
            }
        };
    }

    private boolean giveBackTurn(
            DSLContext tx, LeavingRecord leaving, LeavingThingRecord thing, LocalDate today, UUID by) {
        Turn turn = Turn.parse(thing.getThing());
        @Nullable UUID now = fate(thing) == Fate.HANDED_OVER ? leaving.getReceiverId() : null;
        DutyStore.Change change = new DutyStore.Change(turn, now, leaving.getMemberId());
        return !turn.day().isBefore(today) && duties.write(tx, List.of(change), today, by) instanceof Decision.Done;
    }

    private boolean giveBackLot(DSLContext tx, LeavingRecord leaving, LeavingThingRecord thing, UUID by) {
        UUID lot = UUID.fromString(thing.getThing());
        int changed = fate(thing) == Fate.TAKEN_ALONG
                ? tx.update(LOT)
                        .set(LOT.SEEDS_LEFT, thing.getSeedsBefore())
                        .set(LOT.OFFERED, thing.getOfferedBefore())
                        .set(LOT.VERSION, LOT.VERSION.plus(1))
                        .where(LOT.ID.eq(lot), LOT.OWNER_ID.eq(leaving.getMemberId()), LOT.SEEDS_LEFT.eq(0))
                        .execute()
                : tx.update(LOT)
                        .set(LOT.OWNER_ID, leaving.getMemberId())
                        .set(LOT.VERSION, LOT.VERSION.plus(1))
                        .where(
                                LOT.ID.eq(lot),
                                ownedBy(fate(thing) == Fate.HANDED_OVER ? leaving.getReceiverId() : null))
                        .execute();
        audit.write(tx, by, "give back", "lot", lot, String.valueOf(leaving.getMemberId()));
        return changed == 1;
    }

    private static Condition ownedBy(@Nullable UUID owner) {
        return owner == null ? LOT.OWNER_ID.isNull() : LOT.OWNER_ID.eq(owner);
    }

    private static Fate fate(LeavingThingRecord thing) {
        return Fate.named(thing.getFate())
                .orElseThrow(() -> new IllegalStateException("nothing becomes '" + thing.getFate() + "'"));
    }
}
