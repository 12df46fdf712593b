package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.crop.CropCatalogue;
import warmshelf.seed.LotUse.Meant;
import warmshelf.seed.WorthTesting.Suggestion;

class WorthTestingTest {
    private static final Lot OLD_PEPPER = lot(1, "pepper", 2024, 60);
    private static final Lot NEW_TOMATO = lot(2, "tomato", 2027, 200);
    private static final Lot BIG_LEEK = lot(3, "leek", 2025, 500);
    private static final Lot SMALL_LEEK = lot(4, "leek", 2025, 40);

    @Test
    void what_members_mean_to_sow_comes_first_and_says_why() {
        List<Suggestion> worth = of(List.of(BIG_LEEK, OLD_PEPPER), Map.of(OLD_PEPPER.id(), new Meant(2, 16)));

        assertThat(worth).extracting(Suggestion::id).containsExactly(OLD_PEPPER.id(), BIG_LEEK.id());
        assertThat(worth.get(0).why())
                .contains("Members mean to grow 16 plants of it")
                .contains("seeds at best");
        assertThat(worth.get(1).why()).endsWith("500 seeds.");
    }

    @Test
    void among_lots_nobody_means_to_sow_the_larger_comes_first() {
        assertThat(of(List.of(SMALL_LEEK, BIG_LEEK), Map.of()))
                .extracting(Suggestion::id)
                .containsExactly(BIG_LEEK.id(), SMALL_LEEK.id());
    }

    @Test
    void the_more_plants_hang_on_the_doubt_the_earlier_it_comes() {
        Map<UUID, Meant> meant = Map.of(SMALL_LEEK.id(), new Meant(1, 4), BIG_LEEK.id(), new Meant(3, 60));

        assertThat(of(List.of(SMALL_LEEK, BIG_LEEK), meant))
                .extracting(Suggestion::id)
                .containsExactly(BIG_LEEK.id(), SMALL_LEEK.id());
    }

    // A lot is never asked for more than four times what it would have needed before it aged (SeedNeed).
    @Test
    void no_more_seed_is_named_than_anybody_is_asked_to_sow() {
        Lot ancient = lot(6, "leek", 2017, 400);

        List<Suggestion> worth = of(List.of(ancient), Map.of(ancient.id(), new Meant(1, 12)));

        assertThat(worth.get(0).why()).contains("at worst more than the ").contains("that anybody is asked to sow");
        assertThat(worth.get(0).weight()).isLessThan(4 * 2 * 12);
    }

    @Test
    void seed_that_is_well_known_needs_no_test() {
        LotEvidence tested = new LotEvidence(
                Map.of(NEW_TOMATO.id(), List.of(new GerminationTest(LocalDate.of(2027, 2, 1), 46, 50))), Map.of());

        assertThat(new WorthTesting(CropCatalogue.bundled(), 2027, tested).of(List.of(NEW_TOMATO), Map.of()))
                .isEmpty();
    }

    @Test
    void a_packet_that_a_test_would_use_up_is_not_proposed() {
        Lot few = lot(5, "leek", 2025, WorthTesting.FEWEST_SEEDS - 1);

        assertThat(WorthTesting.candidates(List.of(few, BIG_LEEK), Map.of(few.id(), new Meant(1, 10))))
                .containsExactly(BIG_LEEK);
    }

    private static List<Suggestion> of(List<Lot> lots, Map<UUID, Meant> meant) {
        LotEvidence none = new LotEvidence(Map.of(), Map.of());
        return new WorthTesting(CropCatalogue.bundled(), 2027, none).of(lots, meant);
    }

    private static Lot lot(int id, String crop, int year, int seeds) {
        return new Lot(
                new UUID(0, id),
                crop,
                "Row " + id,
                year,
                seeds,
                null,
                null,
                false,
                "",
                SeedSource.PACKET,
                Storage.UNKNOWN,
                0,
                1);
    }
}
