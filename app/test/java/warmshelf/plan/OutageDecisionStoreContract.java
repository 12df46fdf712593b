package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.testing.Decided.done;

import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.ClashStore;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.allocation.StayStore;
import warmshelf.crop.CropCatalogue;
import warmshelf.decision.Decision;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

abstract class OutageDecisionStoreContract extends StoreContract {
    private static final LocalDate FROM = LocalDate.of(2027, 3, 10);
    private static final LocalDate TO = LocalDate.of(2027, 3, 15);

    private GrowRoom room;
    private OutageDecisionStore mats;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        mats = new OutageDecisionStore(database(), audit());
    }

    @Test
    void a_mat_taken_out_is_listed_until_its_days_are_over() {
        mats.takeOut(room.m1(), FROM, TO, "The plug is loose.", room.tom());

        assertThat(mats.reachingBeyond(FROM)).singleElement().satisfies(out -> {
            assertThat(out.mat()).isEqualTo("M1");
            assertThat(out.lastDay()).isEqualTo(LocalDate.of(2027, 3, 14));
            assertThat(out.by()).isEqualTo("Tom");
        });
        assertThat(mats.reachingBeyond(TO)).isEmpty();
        assertThat(database().sql().fetchCount(AUDIT_LINE, AUDIT_LINE.ACTION.eq("take mat out")))
                .isEqualTo(1);
    }

    @Test
    void whoever_takes_it_out_is_told_how_much_lies_there_on_those_days() {
        StayStore stays = new StayStore(audit(), new ClashStore(CropCatalogue.bundled()));
        UUID sowing = room.tomsPeppers();
        database()
                .sql()
                .transaction(tx -> stays.layOnMat(
                        tx.dsl(),
                        sowing,
                        new PlaceAndDays(room.m1Place1(), new Slot(1, 2), FROM.minusDays(2), FROM.plusDays(1)),
                        26,
                        new Band(24, 30),
                        room.tom()));

        assertThat(staysOn(mats.takeOut(room.m1(), FROM, TO, "Broken.", room.tom())))
                .isEqualTo(1);
        assertThat(staysOn(mats.takeOut(room.m2(), FROM, TO, "Broken.", room.tom())))
                .isZero();
        assertThat(staysOn(mats.takeOut(room.m1(), FROM.plusDays(1), TO, "Broken.", room.tom())))
                .isZero();
    }

    @Test
    void a_mat_that_is_back_early_is_free_from_that_day_and_is_brought_back_once() {
        mats.takeOut(room.m1(), FROM, TO, "Lent.", room.tom());
        UUID out = mats.reachingBeyond(FROM).get(0).id();

        assertThat(done(mats.end(out, FROM.plusDays(2), room.priya()))).isEqualTo(out);

        assertThat(mats.reachingBeyond(FROM).get(0).to()).isEqualTo(FROM.plusDays(2));
        assertThat(mats.end(out, FROM.plusDays(1), room.priya())).isInstanceOf(Decision.Missing.class);
    }

    @Test
    void a_mat_that_never_went_out_lasts_no_day() {
        mats.takeOut(room.m1(), FROM, TO, "Lent.", room.tom());
        UUID out = mats.reachingBeyond(FROM).get(0).id();

        assertThat(done(mats.end(out, FROM.minusDays(3), room.priya()))).isEqualTo(out);

        assertThat(mats.reachingBeyond(FROM.minusDays(3))).isEmpty();
    }

    private int staysOn(UUID out) {
        return mats.staysOn(mats.find(out).orElseThrow(), FROM).size();
    }
}
