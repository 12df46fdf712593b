package warmshelf.surplus;

import static warmshelf.db.generated.Tables.GROUP_PROFILE;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SURPLUS_OFFER;
import static warmshelf.db.generated.Tables.SURPLUS_TAKING;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record2;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.RackHoldStore;
import warmshelf.allocation.StayBookStore;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.db.generated.tables.records.SurplusTakingRecord;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.news.NewsBookStore;
import warmshelf.news.NewsEvent;
import warmshelf.news.NewsKind;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStore;
import warmshelf.sowing.SowingStores;
import warmshelf.words.Message;

/** Keeps seedlings that are given away. Each change holds the sowing's row first, so that changes of one sowing take turns. */
public final class SurplusStore {
    private static final String SUBJECT = "sowing";

    private final DSLContext sql;
    private final Audit audit;
    private final SowingStore sowings;
    private final EntryStore entries;
    private final NewsBookStore news;

    public SurplusStore(SowingStores stores) {
        this(stores.database(), stores.audit(), stores.sowings(), stores.entries());
    }

    public SurplusStore(Database database, Audit audit, SowingStore sowings, EntryStore entries) {
        this.sql = database.sql();
        this.audit = audit;
        this.sowings = sowings;
        this.entries = entries;
        this.news = new NewsBookStore(audit);
    }

    /**
     * When something is decided.
     *
     * @param season the year of planting out that the group works towards
     */
    public record Moment(LocalDate today, int season) {}

    private record Held(Sowing sowing, Progress progress, int offered, int taken) {}

    /**
     * Offers so many seedlings of a sowing in all, in place of what was offered before; a no when there are not that many, or more
     * are taken already.
     */
    public Decision<Sowing> offer(UUID sowing, int plants, Moment moment, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            return offer(tx, holdOpen(tx, sowing, moment), plants, by);
        }));
    }

    /**
     * Offers some when they are handled, within the caller's transaction; only the grower does. Empty when it is done, else why
     * nothing is offered, and nothing was changed.
     */
    public Optional<Message> offerWithin(DSLContext tx, UUID sowing, int plants, LocalDate today, UUID by) {
        return Decision.of(() -> {
                    Held held = holdOpen(tx, sowing, new Moment(today, season(tx)));
                    if (!held.sowing().grower().memberId().equals(by)) {
                        throw Declined.refused(new SurplusRefusal.OthersPlants(
                                held.sowing().grower().name()));
                    }
                    return offer(tx, held, plants, by);
                })
                .refusal();
    }

    private Sowing offer(DSLContext tx, Held held, int plants, UUID by) {
        UUID sowing = held.sowing().id();
        int most = SurplusJudge.most(held.sowing(), held.progress());
        if (plants > most) {
            throw Declined.refused(new SurplusRefusal.TooMany(held.sowing().title(), plants, most));
        }
        if (plants < held.taken()) {
            throw Declined.refused(new SurplusRefusal.TakenAlready(plants, held.taken()));
        }
        write(tx, sowing, plants, by);
        audit.write(tx, by, "give away", SUBJECT, sowing, plants + " plants");
        if (plants > held.offered()) {
            news.tellTheOthers(tx, NewsEvent.ofSowing(NewsKind.SEEDLINGS, sowing, by));
        }
        return held.sowing();
    }

    private static int season(DSLContext tx) {
        return tx.select(GROUP_PROFILE.SEASON).from(GROUP_PROFILE).fetchSingle(GROUP_PROFILE.SEASON);
    }

    /** Offers no more than is taken already. */
    public Decision<Sowing> end(UUID sowing, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            Held held = hold(tx, sowing);
            write(tx, sowing, held.taken(), by);
            audit.write(tx, by, "give no more away", SUBJECT, sowing, held.taken() + " plants are taken");
            return held.sowing();
        }));
    }

    private void write(DSLContext tx, UUID sowing, int plants, UUID by) {
        int changed = tx.update(SURPLUS_OFFER)
                .set(SURPLUS_OFFER.PLANTS, plants)
                .set(SURPLUS_OFFER.OFFERED_BY, by)
                .set(SURPLUS_OFFER.OFFERED_AT, audit.now())
                .where(SURPLUS_OFFER.SOWING_ID.eq(sowing))
                .execute();
        if (changed == 0 && plants > 0) {
            tx.insertInto(SURPLUS_OFFER)
                    .set(SURPLUS_OFFER.SOWING_ID, sowing)
                    .set(SURPLUS_OFFER.PLANTS, plants)
                    .set(SURPLUS_OFFER.TAKEN, 0)
                    .set(SURPLUS_OFFER.OFFERED_BY, by)
                    .set(SURPLUS_OFFER.OFFERED_AT, audit.now())
                    .execute();
        }
    }

    /** Takes so many, all of them or none; a no when fewer are free. */
    public Decision<Sowing> take(UUID sowing, int plants, Moment moment, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            Held held = holdOpen(tx, sowing, moment);
            String title = held.sowing().title();
            if (held.sowing().grower().memberId().equals(by)) {
                throw Declined.refused(new SurplusRefusal.OwnPlants(title));
            }
            int free = SurplusJudge.free(held.sowing(), held.progress(), held.offered(), held.taken());
            if (plants > free) {
                throw Declined.overtaken(new SurplusRefusal.TooFewFree(title, plants, free));
            }
            count(tx, sowing, plants);
            tx.insertInto(SURPLUS_TAKING)
                    .set(SURPLUS_TAKING.ID, UUID.randomUUID())
                    .set(SURPLUS_TAKING.SOWING_ID, sowing)
                    .set(SURPLUS_TAKING.MEMBER_ID, by)
                    .set(SURPLUS_TAKING.PLANTS, plants)
                    .set(SURPLUS_TAKING.TAKEN_AT, audit.now())
                    .execute();
            audit.write(tx, by, "take seedlings", SUBJECT, sowing, plants + " plants");
            news.tellGrower(tx, NewsEvent.ofSowing(NewsKind.SEEDLINGS_TAKEN, sowing, by));
            return held.sowing();
        }));
    }

    /** Confirms that what somebody takes was handed over. */
    public Decision<Sowing> handOver(Taking taking, LocalDate today, UUID by) {
        return change(taking, by, "hand seedlings over", (tx, row) -> {
            require(row.getEndedAt() == null && row.getHandedOverAt() == null);
            row.setHandedOverBy(by);
            row.setHandedOverAt(audit.now());
            row.setHandedOverOn(today);
        });
    }

    /** Takes a confirmation back. */
    public Decision<Sowing> notHandedOver(Taking taking, UUID by) {
        return change(taking, by, "not handed seedlings over", (tx, row) -> {
            require(row.getHandedOverAt() != null);
            row.setHandedOverBy(null);
            row.setHandedOverAt(null);
            row.setHandedOverOn(null);
        });
    }

    /** Ends what was not handed over: it is free again. */
    public Decision<Sowing> giveBack(Taking taking, UUID by) {
        return change(taking, by, "give seedlings back", (tx, row) -> {
            require(row.getEndedAt() == null && row.getHandedOverAt() == null);
            end(tx, row, by);
        });
    }

    /** Ends all that a member takes and does not have yet, within the caller's transaction: they have left. */
    public void giveAllBack(DSLContext tx, UUID member, UUID by) {
        List<UUID> sowings = tx.selectDistinct(SURPLUS_TAKING.SOWING_ID)
                .from(SURPLUS_TAKING)
                .where(
                        SURPLUS_TAKING.MEMBER_ID.eq(member),
                        SURPLUS_TAKING.HANDED_OVER_AT.isNull(),
                        SURPLUS_TAKING.ENDED_AT.isNull())
                .orderBy(SURPLUS_TAKING.SOWING_ID)
                .fetch(SURPLUS_TAKING.SOWING_ID);
        for (UUID sowing : sowings) {
            hold(tx, sowing);
            tx.selectFrom(SURPLUS_TAKING)
                    .where(
                            SURPLUS_TAKING.SOWING_ID.eq(sowing),
                            SURPLUS_TAKING.MEMBER_ID.eq(member),
                            SURPLUS_TAKING.HANDED_OVER_AT.isNull(),
                            SURPLUS_TAKING.ENDED_AT.isNull())
                    .forEach(row -> {
                        end(tx, row, by);
                        row.store();
                        audit.write(tx, by, "give seedlings back", SUBJECT, sowing, row.getPlants() + " plants");
                    });
        }
    }

    /**
     * What became of seedlings that had been given back.
     *
     * @param taken how many takings are as they were
     * @param lost how many are not, because others have taken the seedlings or they died
     */
    public record TakenAgain(int taken, int lost) {}

    /** Takes again what a member has given back since they left, as far as it is still free, within the caller's transaction. */
    public TakenAgain takeAllAgain(DSLContext tx, UUID member, OffsetDateTime left, UUID by) {
        int taken = 0;
        int lost = 0;
        for (SurplusTakingRecord row : tx.selectFrom(SURPLUS_TAKING)
                .where(SURPLUS_TAKING.MEMBER_ID.eq(member), SURPLUS_TAKING.ENDED_AT.ge(left))
                .orderBy(SURPLUS_TAKING.SOWING_ID, SURPLUS_TAKING.ID)
                .fetch()) {
            Held held = hold(tx, row.getSowingId());
            if (SurplusJudge.free(held.sowing(), held.progress(), held.offered(), held.taken()) < row.getPlants()) {
                lost++;
                continue;
            }
            count(tx, row.getSowingId(), row.getPlants());
            row.setEndedBy(null);
            row.setEndedAt(null);
            row.store();
            audit.write(tx, by, "take seedlings again", SUBJECT, row.getSowingId(), row.getPlants() + " plants");
            taken++;
        }
        return new TakenAgain(taken, lost);
    }

    private void end(DSLContext tx, SurplusTakingRecord row, UUID by) {
        count(tx, row.getSowingId(), -row.getPlants());
        row.setEndedBy(by);
        row.setEndedAt(audit.now());
    }

    /** Counts plants as taken; the table refuses more than there are. */
    private static void count(DSLContext tx, UUID sowing, int plants) {
        tx.update(SURPLUS_OFFER)
                .set(SURPLUS_OFFER.TAKEN, SURPLUS_OFFER.TAKEN.plus(plants))
                .where(SURPLUS_OFFER.SOWING_ID.eq(sowing))
                .execute();
    }

    private interface Change {
        void make(DSLContext tx, SurplusTakingRecord row);
    }

    private Decision<Sowing> change(Taking taking, UUID by, String what, Change change) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            Sowing sowing = hold(tx, taking.sowingId()).sowing();
            SurplusTakingRecord row = tx.fetchOne(SURPLUS_TAKING, SURPLUS_TAKING.ID.eq(taking.id()));
            if (row == null) {
                throw Declined.missing();
            }
            change.make(tx, row);
            row.store();
            audit.write(tx, by, what, SUBJECT, sowing.id(), row.getPlants() + " plants");
            return sowing;
        }));
    }

    private static void require(boolean asSeen) {
        if (!asSeen) {
            throw Declined.overtaken(new SurplusRefusal.Changed());
        }
    }

    private Held holdOpen(DSLContext tx, UUID id, Moment moment) {
        Held held = hold(tx, id);
        // What stays of somebody who has left is offered nowhere.
        if (tx.fetchExists(MEMBER, MEMBER.ID.eq(held.sowing().grower().memberId()), MEMBER.LEFT_AT.isNotNull())) {
            throw Declined.refused(new SurplusRefusal.NotOpen(held.sowing().title()));
        }
        SurplusJudge judge = new SurplusJudge(moment.today(), moment.season(), RackHoldStore.read(tx));
        judge.whyClosed(held.sowing(), held.progress(), StayBookStore.ofSowing(tx, id))
                .ifPresent(reason -> {
                    throw Declined.refused(reason);
                });
        return held;
    }

    private Held hold(DSLContext tx, UUID id) {
        Sowing sowing = sowings.findAndHold(tx, id).orElseThrow(Declined::missing);
        Progress progress = Progress.of(sowing.method(), sowing.seeds(), entries.ofSowing(tx, id));
        @Nullable
        Record2<Integer, Integer> offer = tx.select(SURPLUS_OFFER.PLANTS, SURPLUS_OFFER.TAKEN)
                .from(SURPLUS_OFFER)
                .where(SURPLUS_OFFER.SOWING_ID.eq(id))
                .fetchOne();
        return new Held(sowing, progress, offer == null ? 0 : offer.value1(), offer == null ? 0 : offer.value2());
    }
}
