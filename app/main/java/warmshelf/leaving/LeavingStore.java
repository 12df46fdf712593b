package warmshelf.leaving;

import static warmshelf.db.generated.Tables.LEAVING;
import static warmshelf.db.generated.Tables.LEAVING_THING;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.SOWING;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record2;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.duty.DutyStore;
import warmshelf.duty.Turn;
import warmshelf.group.Member;
import warmshelf.group.MemberStore;
import warmshelf.program.ProgramTokenStore;
import warmshelf.reminder.CalendarLinkStore;
import warmshelf.sowing.HistoryStore;
import warmshelf.surplus.SurplusStore;

/** Keeps that somebody has left, and carries out what was decided of all they leave, in one transaction. */
public final class LeavingStore {
    private final DSLContext sql;
    private final Audit audit;
    private final LeftThingStore things;
    private final MemberStore members;
    private final HistoryStore histories;
    private final DutyStore duties;
    private final SurplusStore surplus;

    LeavingStore(
            Database database,
            Audit audit,
            LeftThingStore things,
            MemberStore members,
            HistoryStore histories,
            DutyStore duties,
            SurplusStore surplus) {
        this.sql = database.sql();
        this.audit = audit;
        this.things = things;
        this.members = members;
        this.histories = histories;
        this.duties = duties;
        this.surplus = surplus;
    }

    List<LeftThing> things(UUID member, LocalDate today) {
        return things.of(sql, member, today);
    }

    /**
     * Lets a member go as decided, all or nothing; a no for the only coordinator, and when something came or went since it was
     * decided.
     *
     * @return the id of the leaving
     */
    Decision<UUID> leave(Member member, LeavingForm.Decided decided, LocalDate today, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            members.keepACoordinator(tx, member.id());
            boolean asDecided = new HashSet<>(things.of(tx, member.id(), today))
                    .equals(decided.fates().keySet());
            // The rota first: it says so, and writes nothing, when somebody was quicker.
            if (!asDecided || !handTurns(tx, member.id(), decided, today, by)) {
                throw Declined.overtaken(new LeavingRefusal.ChangedMeanwhile(member.name()));
            }
            UUID leaving = note(tx, member, decided.receiver(), by);
            decided.fates().forEach((thing, fate) -> {
                keep(tx, leaving, thing, fate);
                carryOut(tx, thing, fate, decided.receiver(), by);
            });
            // Seedlings that they were to fetch are free for others.
            surplus.giveAllBack(tx, member.id(), by);
            members.leave(tx, member.id(), by);
            CalendarLinkStore.endAll(tx, member.id());
            ProgramTokenStore.endAll(tx, member.id(), by, audit.now());
            return leaving;
        }));
    }

    /**
     * How much of what somebody has would end or be the group's if they were gone.
     *
     * @param trays under way; they stay where they lie, without a name
     * @param requests not sown yet; they are withdrawn
     * @param turns on duty to come; they stand empty
     * @param lots of seed with something in them; they are the group's
     */
    public record Left(int trays, int requests, int turns, int lots) {}

    /** What somebody has that has not ended by a day. */
    public Left left(UUID member, LocalDate today) {
        List<LeftThing> found = things(member, today);
        return new Left(
                count(found, LeftKind.TRAY),
                count(found, LeftKind.REQUEST),
                count(found, LeftKind.TURN),
                count(found, LeftKind.LOT));
    }

    private static int count(List<LeftThing> things, LeftKind kind) {
        return (int) things.stream().filter(thing -> thing.kind() == kind).count();
    }

    /**
     * Carries out, within the caller's transaction, what becomes of all that somebody has when there is nobody any more to have it:
     * nothing goes to anybody, and nothing is kept to take it back by.
     */
    public void giveUpAll(DSLContext tx, Member member, LocalDate today, UUID by) {
        Map<LeftThing, Fate> fates = new LinkedHashMap<>();
        things.of(tx, member.id(), today)
                .forEach(thing -> fates.put(thing, thing.kind().fateWithoutOwner()));
        if (!handTurns(tx, member.id(), new LeavingForm.Decided(fates, null), today, by)) {
            throw Declined.overtaken(new LeavingRefusal.ChangedMeanwhile(member.name()));
        }
        fates.forEach((thing, fate) -> carryOut(tx, thing, fate, null, by));
        surplus.giveAllBack(tx, member.id(), by);
        if (member.present()) {
            members.leave(tx, member.id(), by);
        }
    }

    private boolean handTurns(DSLContext tx, UUID member, LeavingForm.Decided decided, LocalDate today, UUID by) {
        List<DutyStore.Change> changes = decided.fates().entrySet().stream()
                .filter(each -> each.getKey().kind() == LeftKind.TURN)
                .map(each -> new DutyStore.Change(
                        Turn.parse(each.getKey().key()), member, receiver(each, decided.receiver())))
                .toList();
        return duties.write(tx, changes, today, by) instanceof Decision.Done;
    }

    private static @Nullable UUID receiver(Map.Entry<LeftThing, Fate> each, @Nullable UUID receiver) {
        return each.getValue() == Fate.HANDED_OVER ? receiver : null;
    }

    private UUID note(DSLContext tx, Member member, @Nullable UUID receiver, UUID by) {
        UUID id = UUID.randomUUID();
        tx.insertInto(LEAVING)
                .set(LEAVING.ID, id)
                .set(LEAVING.MEMBER_ID, member.id())
                .set(LEAVING.ROLE_BEFORE, member.coordinator() ? "coordinator" : "member")
                .set(LEAVING.RECEIVER_ID, receiver)
                .set(LEAVING.MADE_BY, by)
                .set(LEAVING.MADE_AT, audit.now())
                .execute();
        return id;
    }

    /** Notes a thing's fate, and of seed that goes along how much there was. */
    private static void keep(DSLContext tx, UUID leaving, LeftThing thing, Fate fate) {
        Record2<Integer, Integer> seeds = fate == Fate.TAKEN_ALONG
                ? tx.select(LOT.SEEDS_LEFT, LOT.OFFERED)
                        .from(LOT)
                        .where(LOT.ID.eq(UUID.fromString(thing.key())))
                        .forUpdate()
                        .fetchSingle()
                : null;
        tx.insertInto(LEAVING_THING)
                .set(LEAVING_THING.LEAVING_ID, leaving)
                .set(LEAVING_THING.KIND, thing.kind().word())
                .set(LEAVING_THING.THING, thing.key())
                .set(LEAVING_THING.FATE, fate.word())
                .set(LEAVING_THING.SEEDS_BEFORE, seeds == null ? null : seeds.value1())
                .set(LEAVING_THING.OFFERED_BEFORE, seeds == null ? null : seeds.value2())
                .execute();
    }

    private void carryOut(DSLContext tx, LeftThing thing, Fate fate, @Nullable UUID receiver, UUID by) {
        switch (thing.kind()) {
            case TRAY, REQUEST -> carryOutSowing(tx, UUID.fromString(thing.key()), fate, receiver, by);
            case LOT -> carryOutLot(tx, UUID.fromString(thing.key()), fate, receiver, by);
            case TURN -> {
                // handed on with the rota, all turns at once
            }
        }
    }

    private void carryOutSowing(DSLContext tx, UUID sowing, Fate fate, @Nullable UUID receiver, UUID by) {
        if (fate == Fate.WITHDRAWN) {
            histories.withdraw(tx, sowing, by);
        } else if (fate == Fate.HANDED_OVER) {
            tx.update(SOWING)
                    .set(SOWING.MEMBER_ID, receiver)
                    .set(SOWING.VERSION, SOWING.VERSION.plus(1))
                    .where(SOWING.ID.eq(sowing))
                    .execute();
            audit.write(tx, by, "hand over", "sowing", sowing, String.valueOf(receiver));
        }
    }

    private void carryOutLot(DSLContext tx, UUID lot, Fate fate, @Nullable UUID receiver, UUID by) {
        if (fate == Fate.TAKEN_ALONG) {
            tx.update(LOT)
                    .set(LOT.SEEDS_LEFT, 0)
                    .set(LOT.COUNTS, LOT.COUNTS.plus(1))
                    .set(LOT.OFFERED, 0)
                    .set(LOT.VERSION, LOT.VERSION.plus(1))
                    .where(LOT.ID.eq(lot))
                    .execute();
            audit.write(tx, by, "take along", "lot", lot, "");
        } else {
            UUID owner = fate == Fate.HANDED_OVER ? receiver : null;
            tx.update(LOT)
                    .set(LOT.OWNER_ID, owner)
                    .set(LOT.VERSION, LOT.VERSION.plus(1))
                    .where(LOT.ID.eq(lot))
                    .execute();
            audit.write(tx, by, "hand over", "lot", lot, String.valueOf(owner));
        }
    }
}
