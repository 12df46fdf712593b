package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.testing.Decided.done;

import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.testing.StoreContract;
import warmshelf.testing.TestGroup;

/** What was used is retired and brought back; what lies there beyond the day is told. */
abstract class RetirementStoreContract extends StoreContract {
    private static final LocalDate TODAY = TestGroup.TODAY;

    private ShelvingStore shelving;
    private RetirementStore retirements;
    private ShelfCast cast;
    private UUID site;
    private UUID rack;
    private UUID shelf;
    private UUID mat;

    @BeforeEach
    void prepare() {
        shelving = new ShelvingStore(database().sql());
        retirements = new RetirementStore(database().sql(), audit());
        cast = new ShelfCast(database(), audit());
        rack = cast.rack();
        site = shelving.all().get(0).id();
        shelf = done(new ShelfStore(database().sql(), audit()).add(rack, new ShelfDraft(1, 2, 40), cast.ilse()));
        mat = done(new MatStore(database().sql(), audit())
                .add(shelf, new MatDraft("M1", 1, 2, 18, 32, 107, 25), cast.ilse()));
    }

    private UUID warm() {
        return shelving.mat(mat).orElseThrow().places().get(0).id();
    }

    private UUID lit() {
        return shelving.shelf(shelf).orElseThrow().litPlaces().get(0).id();
    }

    private Decision<UUID> retire(ShelvingPart part, UUID id, LocalDate from) {
        return retirements.retire(part, id, from, cast.ilse());
    }

    @Test
    void nothing_is_retired_at_first() {
        assertThat(retirements.read()).isEqualTo(Retirements.NONE);
        assertThat(retirements.read().inUse(shelving.all(), TODAY)).isEqualTo(shelving.all());
    }

    @Test
    void what_was_used_is_retired_the_day_after_its_last_and_what_stands_on_it_with_it() {
        cast.stay(warm(), 1, 4, TODAY.minusDays(20), 15);

        done(retire(ShelvingPart.RACK, rack, TODAY));

        Retirements retired = retirements.read();
        assertThat(retired.parts()).containsOnlyKeys(rack);
        assertThat(retired.mats()).containsOnlyKeys(mat);
        assertThat(retired.places()).hasSize(4).containsKeys(warm(), lit());
        assertThat(retired.inTheWay(lit(), TODAY.plusDays(1))).contains(TODAY);
        assertThat(retired.inTheWay(lit(), TODAY)).isEmpty();
        assertThat(retired.inUse(shelving.all(), TODAY).get(0).racks()).isEmpty();
        assertThat(retired.inUse(shelving.all(), TODAY.minusDays(1))).isEqualTo(shelving.all());
        assertThat(OutageStore.out(database().sql(), TODAY)).containsExactly(mat);
        assertThat(OutageStore.out(database().sql(), TODAY.minusDays(1))).isEmpty();
    }

    @Test
    void of_several_days_the_first_counts() {
        done(retire(ShelvingPart.MAT, mat, TODAY.plusDays(9)));
        done(retire(ShelvingPart.SITE, site, TODAY.plusDays(4)));

        assertThat(retirements.read().places().get(warm())).isEqualTo(TODAY.plusDays(4));
        assertThat(retirements.read().inUse(shelving.all(), TODAY.plusDays(4))).isEmpty();
    }

    @Test
    void while_something_lies_beyond_the_day_it_is_told_what_and_nothing_changes() {
        UUID lies = cast.stay(warm(), 1, 2, TODAY.minusDays(3), 10);
        UUID booked = cast.stay(lit(), 1, 4, TODAY.plusDays(7), 20);

        assertThat(retire(ShelvingPart.SHELF, shelf, TODAY.plusDays(6)).refusal())
                .contains(new ShelfRefusal.LieBeyond(2, TODAY.plusDays(6)));
        assertThat(retirements.lyingBeyond(ShelvingPart.SHELF, shelf, TODAY.plusDays(6)))
                .containsExactly(
                        new StayBeyond(lies, TODAY.minusDays(3), TODAY.plusDays(7), "M1", 1),
                        new StayBeyond(booked, TODAY.plusDays(7), TODAY.plusDays(27), "", 1));
        assertThat(retirements.read()).isEqualTo(Retirements.NONE);

        done(retire(ShelvingPart.MAT, mat, TODAY.plusDays(7)));
        assertThat(retirements.read().parts()).containsOnlyKeys(mat);
    }

    @Test
    void what_is_brought_back_is_as_it_was() {
        done(retire(ShelvingPart.SHELF, shelf, TODAY));

        done(retirements.bringBack(ShelvingPart.SHELF, shelf, cast.ilse()));

        assertThat(retirements.read()).isEqualTo(Retirements.NONE);
        assertThat(retirements.read().inUse(shelving.all(), TODAY)).isEqualTo(shelving.all());
        assertThat(retirements.bringBack(ShelvingPart.MAT, UUID.randomUUID(), cast.ilse()))
                .isInstanceOf(Decision.Missing.class);
    }
}
