package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.testing.Decided.done;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.testing.StoreContract;
import warmshelf.testing.TestGroup;

/** What nobody ever used can be deleted; what was used stays. */
abstract class RemovalStoreContract extends StoreContract {
    private ShelvingStore shelving;
    private RemovalStore removals;
    private ShelfCast cast;
    private UUID rack;
    private UUID shelf;
    private UUID mat;

    @BeforeEach
    void prepare() {
        shelving = new ShelvingStore(database().sql());
        removals = new RemovalStore(database().sql(), audit());
        cast = new ShelfCast(database(), audit());
        rack = cast.rack();
        shelf = done(new ShelfStore(database().sql(), audit()).add(rack, new ShelfDraft(1, 2, 40), cast.ilse()));
        mat = done(new MatStore(database().sql(), audit())
                .add(shelf, new MatDraft("M1", 1, 2, 18, 32, 107, 25), cast.ilse()));
    }

    @Test
    void a_rack_that_nobody_used_goes_with_all_that_stands_on_it_and_then_its_site_can() {
        UUID site = shelving.all().get(0).id();
        cast.setPoint(mat, TestGroup.TODAY, 25);

        assertThat(remove(ShelvingPart.SITE, site).refusal()).contains(new ShelfRefusal.RacksStand(1));
        done(remove(ShelvingPart.RACK, rack));
        assertThat(shelving.all().get(0).racks()).isEmpty();
        done(remove(ShelvingPart.SITE, site));
        assertThat(shelving.all()).isEmpty();
        assertThat(remove(ShelvingPart.SITE, site)).isInstanceOf(Decision.Missing.class);
    }

    @Test
    void a_shelf_or_a_mat_goes_alone() {
        done(remove(ShelvingPart.MAT, mat));
        assertThat(shelving.shelf(shelf).orElseThrow().mats()).isEmpty();
        done(remove(ShelvingPart.SHELF, shelf));
        assertThat(shelving.rack(rack).orElseThrow().shelves()).isEmpty();
    }

    @Test
    void where_a_tray_lies_is_to_lie_or_lay_nothing_goes_and_looking_says_the_same() {
        Shelf both = shelving.shelf(shelf).orElseThrow();
        UUID lit = both.litPlaces().get(0).id();
        UUID warm = both.mats().get(0).places().get(0).id();

        cast.stay(lit, 1, 4, TestGroup.TODAY.minusDays(20), 5);
        refused(List.of(ShelvingPart.SHELF, ShelvingPart.RACK), new ShelfRefusal.WasUsed());
        assertThat(removals.against(ShelvingPart.MAT, mat, TestGroup.TODAY)).isEmpty();

        cast.stay(warm, 1, 4, TestGroup.TODAY.plusDays(3), 5);
        refused(List.of(ShelvingPart.MAT, ShelvingPart.SHELF, ShelvingPart.RACK), new ShelfRefusal.TraysBooked(1));

        cast.stay(lit, 1, 4, TestGroup.TODAY, 5);
        refused(List.of(ShelvingPart.SHELF, ShelvingPart.RACK), new ShelfRefusal.TraysLie(1));
        assertThat(shelving.shelf(shelf)).contains(both);
    }

    private void refused(List<ShelvingPart> parts, ShelfRefusal no) {
        for (ShelvingPart part : parts) {
            UUID id = part == ShelvingPart.MAT ? mat : part == ShelvingPart.SHELF ? shelf : rack;
            assertThat(removals.against(part, id, TestGroup.TODAY))
                    .as("%s", part)
                    .contains(no);
            assertThat(remove(part, id).refusal()).as("%s", part).contains(no);
        }
    }

    private Decision<UUID> remove(ShelvingPart part, UUID id) {
        return removals.remove(part, id, "it", TestGroup.TODAY, cast.ilse());
    }
}
