package warmshelf.finding.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.TRIAL;
import static warmshelf.db.generated.Tables.TRIAL_BLOCK;
import static warmshelf.db.generated.Tables.TRIAL_SOWING;
import static warmshelf.db.generated.Tables.TRIAL_WAY;

import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.ClashStore;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.allocation.StayStore;
import warmshelf.allocation.WarmDays;
import warmshelf.crop.CropCatalogue;
import warmshelf.sowing.Sowing;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

/** What a move would do to a trial, on every database: a tray on a mat at 26 °C, and its fellow, a bag. */
abstract class TrialWarmthStoreContract extends StoreContract {
    private static final LocalDate DAY = LocalDate.of(2027, 3, 6);
    private static final LocalDate AFTER = DAY.plusDays(14);

    private GrowRoom room;
    private TrialWarmthStore warmth;
    private UUID tray;
    private UUID bag;

    @BeforeEach
    void layTheTray() {
        room = new GrowRoom(database(), audit());
        warmth = new TrialWarmthStore(database());
        tray = room.tomsPeppers();
        bag = room.tomsBag();
        StayStore stays = new StayStore(audit(), new ClashStore(CropCatalogue.bundled()));
        PlaceAndDays spot = new PlaceAndDays(room.m1Place1(), new Slot(1, 2), DAY, AFTER);
        database().sql().transaction(tx -> stays.layOnMat(tx.dsl(), tray, spot, 26, new Band(24, 30), room.tom()));
    }

    @Test
    void its_fellow_at_another_warmth_is_told_where_the_trial_asks_about_something_else() {
        declare(TrialKind.METHOD);

        assertThat(warmth.apart(bag, WarmDays.throughout(DAY, AFTER, 29)))
                .singleElement()
                .satisfies(apart -> {
                    assertThat(apart.way()).isEqualTo("B");
                    assertThat(apart.celsius()).isEqualTo(29);
                    assertThat(apart.fellow()).isEqualTo("A");
                    assertThat(apart.fellowCelsius()).isEqualTo(26);
                    assertThat(apart.day()).isEqualTo(DAY);
                });
        assertThat(warmth.apart(bag, WarmDays.throughout(DAY, AFTER, 26))).isEmpty();
        assertThat(warmth.apart(bag, null)).isEmpty();
    }

    @Test
    void where_warmth_is_the_question_nothing_is_told() {
        declare(TrialKind.WARMTH);

        assertThat(warmth.apart(bag, WarmDays.throughout(DAY, AFTER, 29))).isEmpty();
    }

    @Test
    void what_is_of_no_trial_may_lie_anywhere() {
        assertThat(warmth.apart(bag, WarmDays.throughout(DAY, AFTER, 29))).isEmpty();
    }

    private void declare(TrialKind kind) {
        UUID id = UUID.randomUUID();
        Sowing sowing = room.sowings().find(tray).orElseThrow();
        database()
                .sql()
                .insertInto(TRIAL)
                .set(TRIAL.ID, id)
                .set(TRIAL.NUMBER, 1)
                .set(TRIAL.KIND, kind.word())
                .set(TRIAL.LOT_ID, sowing.lotId())
                .set(TRIAL.SEASON, 2027)
                .set(TRIAL.SEEDS_EACH, 12)
                .set(TRIAL.DECLARED_BY, room.tom())
                .set(TRIAL.DECLARED_AT, audit().now())
                .execute();
        way(id, "A", "cells");
        way(id, "B", "bag");
        database()
                .sql()
                .insertInto(TRIAL_BLOCK)
                .set(TRIAL_BLOCK.TRIAL_ID, id)
                .set(TRIAL_BLOCK.NUMBER, 1)
                .set(TRIAL_BLOCK.MEMBER_ID, room.tom())
                .set(TRIAL_BLOCK.SOW_ON, DAY)
                .set(TRIAL_BLOCK.DRAW, 1)
                .set(TRIAL_BLOCK.DEALT, "AB")
                .set(TRIAL_BLOCK.LAID_OUT, "AB")
                .set(TRIAL_BLOCK.JOINED_AT, audit().now())
                .execute();
        sowing(id, tray, "A");
        sowing(id, bag, "B");
    }

    private void way(UUID trial, String letter, String method) {
        database()
                .sql()
                .insertInto(TRIAL_WAY)
                .set(TRIAL_WAY.TRIAL_ID, trial)
                .set(TRIAL_WAY.LETTER, letter)
                .set(TRIAL_WAY.METHOD, method)
                .set(TRIAL_WAY.WARM, true)
                .set(TRIAL_WAY.SOAKED, false)
                .execute();
    }

    private void sowing(UUID trial, UUID sowing, String letter) {
        database()
                .sql()
                .insertInto(TRIAL_SOWING)
                .set(TRIAL_SOWING.SOWING_ID, sowing)
                .set(TRIAL_SOWING.TRIAL_ID, trial)
                .set(TRIAL_SOWING.BLOCK, 1)
                .set(TRIAL_SOWING.LETTER, letter)
                .execute();
    }
}
