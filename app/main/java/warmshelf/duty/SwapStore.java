package warmshelf.duty;

import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.DUTY_SWAP;
import static warmshelf.db.generated.Tables.DUTY_SWAP_REFUSAL;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** Keeps who asks whom to take a day, and changes the rota in the transaction in which somebody says yes. */
public final class SwapStore {
    private final DSLContext sql;
    private final Audit audit;
    private final StandInStore standIns;

    public SwapStore(Database database, Audit audit, StandInStore standIns) {
        this.sql = database.sql();
        this.audit = audit;
        this.standIns = standIns;
    }

    /**
     * The person on duty asks.
     *
     * @param askedOf null: anyone; with a day in return the one who has it
     */
    public SwapOutcome ask(Turn turn, @Nullable UUID askedOf, @Nullable Turn inReturn, LocalDate today, UUID by) {
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            StandInStore.holdRota(tx);
            UUID asked = inReturn == null ? askedOf : DutyStore.holder(tx, inReturn);
            Optional<String> no = SwapRules.againstAsking(
                    new SwapRules.Asked(turn, askedOf, inReturn, by),
                    RotaBookStore.duties(tx, today),
                    isAskedAlready(tx, turn),
                    today);
            if (no.isPresent()) {
                return SwapOutcome.refused(no.get());
            }
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
            return SwapOutcome.done("You have asked. The day is yours until somebody takes it.");
        });
    }

    /** Says yes: the rota changes at once. Empty: there is no such swap. */
    public Optional<SwapOutcome> take(UUID id, LocalDate today, UUID by) {
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            StandInStore.holdRota(tx);
            return SwapReadStore.find(tx, id).map(swap -> {
                Map<Turn, UUID> duties = RotaBookStore.duties(tx, today);
                Optional<String> no = SwapRules.againstTaking(swap, by, duties, RotaBookStore.together(tx), today);
                return no.isPresent() ? SwapOutcome.refused(no.get()) : take(tx, swap, today, by);
            });
        });
    }

    private SwapOutcome take(DSLContext tx, Swap swap, LocalDate today, UUID by) {
        end(tx, swap.id(), SwapState.TAKEN, by);
        give(tx, swap.turn(), by, by);
        Turn inReturn = swap.inReturn();
        if (inReturn != null) {
            give(tx, inReturn, swap.askedBy().id(), by);
        }
        standIns.settle(tx, today, by);
        audit.write(tx, by, "take a swap", "swap", swap.id(), swap.turn().words());
        return SwapOutcome.done("%s is yours. Thank you.".formatted(swap.words()));
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
    public Optional<SwapOutcome> decline(UUID id, LocalDate today, UUID by) {
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            StandInStore.holdRota(tx);
            return SwapReadStore.find(tx, id).map(swap -> {
                if (!swap.asks(by, today)) {
                    return SwapOutcome.refused("You are not asked for %s any more.".formatted(swap.words()));
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
                return SwapOutcome.done(
                        "%s reads that you cannot.".formatted(swap.askedBy().name()));
            });
        });
    }

    /** The asker asks no more. */
    public Optional<SwapOutcome> withdraw(UUID id, UUID by) {
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            StandInStore.holdRota(tx);
            return SwapReadStore.find(tx, id).map(swap -> {
                if (!swap.askedBy().id().equals(by)) {
                    return SwapOutcome.refused("Only %s, who asked, can withdraw this."
                            .formatted(swap.askedBy().name()));
                }
                if (swap.state() != SwapState.OPEN) {
                    return SwapOutcome.refused(SwapRules.endedWords(swap));
                }
                end(tx, id, SwapState.WITHDRAWN, null);
                audit.write(tx, by, "withdraw a swap", "swap", id, swap.turn().words());
                return SwapOutcome.done("You ask no more; %s stays yours.".formatted(swap.words()));
            });
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
