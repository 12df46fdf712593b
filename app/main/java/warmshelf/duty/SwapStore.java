package warmshelf.duty;

import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.DUTY_SWAP;
import static warmshelf.db.generated.Tables.DUTY_SWAP_REFUSAL;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BiConsumer;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.news.NewsBookStore;
import warmshelf.news.NewsEvent;
import warmshelf.news.NewsKind;

/** Keeps who asks whom to take a day, and changes the rota in the transaction in which somebody says yes. */
public final class SwapStore {
    private final DSLContext sql;
    private final Audit audit;
    private final StandInStore standIns;
    private final NewsBookStore news;

    public SwapStore(Database database, Audit audit, StandInStore standIns) {
        this.sql = database.sql();
        this.audit = audit;
        this.standIns = standIns;
        this.news = new NewsBookStore(audit);
    }

    /**
     * The person on duty asks.
     *
     * @param askedOf null: anyone; with a day in return the one who has it
     */
    public Decision<UUID> ask(Turn turn, @Nullable UUID askedOf, @Nullable Turn inReturn, LocalDate today, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            StandInStore.holdRota(tx);
            UUID asked = inReturn == null ? askedOf : DutyStore.holder(tx, inReturn);
            unless(SwapRules.againstAsking(
                    new SwapRules.Asked(turn, askedOf, inReturn, by),
                    RotaBookStore.duties(tx, today),
                    isAskedAlready(tx, turn),
                    today));
            UUID id = UUID.randomUUID();
            tx.insertInto(DUTY_SWAP)
                    .set(DUTY_SWAP.ID, id)
                    .set(DUTY_SWAP.SITE_ID, turn.site())
                    .set(DUTY_SWAP.ON_DAY, turn.day())
                    .set(DUTY_SWAP.ASKED_BY, by)
                    .set(DUTY_SWAP.ASKED_AT, audit.now())
                    .set(DUTY_SWAP.ASKED_OF, asked)
                    .set(DUTY_SWAP.RETURN_SITE_ID, inReturn == null ? null : inReturn.site())
                    .set(DUTY_SWAP.RETURN_DAY, inReturn == null ? null : inReturn.day())
                    .set(DUTY_SWAP.STATE, SwapState.OPEN.word())
                    .execute();
            audit.write(tx, by, "ask for a swap", "swap", id, turn.words());
            NewsEvent event = NewsEvent.ofSwap(NewsKind.DUTY_ASKED, id, by);
            if (asked == null) {
                news.tellTheOthers(tx, event);
            } else {
                news.tell(tx, asked, event);
            }
            return id;
        }));
    }

    /** Says yes: the rota changes at once. */
    public Decision<Swap> take(UUID id, LocalDate today, UUID by) {
        return withSwap(id, (tx, swap) -> {
            unless(SwapRules.againstTaking(
                    swap, by, RotaBookStore.duties(tx, today), RotaBookStore.together(tx), today));
            take(tx, swap, today, by);
        });
    }

    /** Does something with a swap while nobody else changes the rota. */
    private Decision<Swap> withSwap(UUID id, BiConsumer<DSLContext, Swap> work) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            StandInStore.holdRota(tx);
            Swap swap = SwapReadStore.find(tx, id).orElseThrow(Declined::missing);
            work.accept(tx, swap);
            return swap;
        }));
    }

    private static void unless(Optional<SwapRefusal> no) {
        no.ifPresent(reason -> {
            throw Declined.refused(reason);
        });
    }

    private void take(DSLContext tx, Swap swap, LocalDate today, UUID by) {
        end(tx, swap.id(), SwapState.TAKEN, by);
        give(tx, swap.turn(), by, by);
        Turn inReturn = swap.inReturn();
        if (inReturn != null) {
            give(tx, inReturn, swap.askedBy().id(), by);
        }
        standIns.settle(tx, today, by);
        audit.write(tx, by, "take a swap", "swap", swap.id(), swap.turn().words());
        news.tell(tx, swap.askedBy().id(), NewsEvent.ofSwap(NewsKind.DUTY_TAKEN, swap.id(), by));
    }

    private void give(DSLContext tx, Turn turn, UUID member, UUID by) {
        tx.update(DUTY)
                .set(DUTY.MEMBER_ID, member)
                .set(DUTY.MADE_BY, by)
                .set(DUTY.MADE_AT, audit.now())
                .where(DUTY.SITE_ID.eq(turn.site()), DUTY.ON_DAY.eq(turn.day()))
                .execute();
        overtake(tx, turn, audit.now());
        audit.write(tx, by, "set duty", "site", turn.site(), turn.day() + " " + member);
    }

    /** Says no. A swap that only one was asked for is over then. */
    public Decision<Swap> decline(UUID id, LocalDate today, UUID by) {
        return withSwap(id, (tx, swap) -> {
            if (!swap.asks(by, today)) {
                throw Declined.refused(new SwapRefusal.NotAsked(swap.words()));
            }
            tx.insertInto(DUTY_SWAP_REFUSAL)
                    .set(DUTY_SWAP_REFUSAL.SWAP_ID, id)
                    .set(DUTY_SWAP_REFUSAL.MEMBER_ID, by)
                    .set(DUTY_SWAP_REFUSAL.MADE_AT, audit.now())
                    .execute();
            if (swap.askedOf() != null) {
                end(tx, id, SwapState.DECLINED, null);
            }
            audit.write(tx, by, "decline a swap", "swap", id, swap.turn().words());
        });
    }

    /** The asker asks no more. */
    public Decision<Swap> withdraw(UUID id, UUID by) {
        return withSwap(id, (tx, swap) -> {
            if (!swap.askedBy().id().equals(by)) {
                throw Declined.refused(new SwapRefusal.NotYours(swap.askedBy().name()));
            }
            if (swap.state() != SwapState.OPEN) {
                throw Declined.refused(SwapRules.ended(swap));
            }
            end(tx, id, SwapState.WITHDRAWN, null);
            audit.write(tx, by, "withdraw a swap", "swap", id, swap.turn().words());
        });
    }

    private static boolean isAskedAlready(DSLContext tx, Turn turn) {
        return tx.fetchExists(
                DUTY_SWAP,
                DUTY_SWAP.SITE_ID.eq(turn.site()),
                DUTY_SWAP.ON_DAY.eq(turn.day()),
                DUTY_SWAP.STATE.eq(SwapState.OPEN.word()));
    }

    private void end(DSLContext tx, UUID id, SwapState state, @Nullable UUID takenBy) {
        tx.update(DUTY_SWAP)
                .set(DUTY_SWAP.STATE, state.word())
                .set(DUTY_SWAP.TAKEN_BY, takenBy)
                .set(DUTY_SWAP.ENDED_AT, audit.now())
                .where(DUTY_SWAP.ID.eq(id))
                .execute();
    }

    /** A turn has gone to somebody else: whatever was still asked about it is over. */
    static void overtake(DSLContext tx, Turn turn, OffsetDateTime now) {
        tx.update(DUTY_SWAP)
                .set(DUTY_SWAP.STATE, SwapState.OVERTAKEN.word())
                .set(DUTY_SWAP.ENDED_AT, now)
                .where(
                        DUTY_SWAP.STATE.eq(SwapState.OPEN.word()),
                        DUTY_SWAP
                                .SITE_ID
                                .eq(turn.site())
                                .and(DUTY_SWAP.ON_DAY.eq(turn.day()))
                                .or(DUTY_SWAP.RETURN_SITE_ID.eq(turn.site()).and(DUTY_SWAP.RETURN_DAY.eq(turn.day()))))
                .execute();
    }
}
