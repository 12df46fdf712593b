package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Crop.Basis;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Hardiness;
import warmshelf.crop.Method;
import warmshelf.crop.OwnHorticulture;
import warmshelf.crop.Variety;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.seed.Lot;
import warmshelf.seed.SeedSource;
import warmshelf.seed.Storage;
import warmshelf.testing.Crops;
import warmshelf.timeline.SeasonPart;
import warmshelf.timeline.Seen;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.Verdict;

class StillInTimeTest {
    // Duluth, Minnesota: the autumn's frosts come in September.
    private static final LocalDate JULY = LocalDate.of(2027, 7, 1);
    private static final UUID TOM = new UUID(4, 4);
    private static final UUID PRIYA = new UUID(4, 5);
    private static final Variety SHORT_SEASON = new Variety(
            "tomato",
            "Short Season",
            new DaysToMaturity(20, 25, Basis.TRANSPLANTING),
            "the packet",
            1,
            "Tom",
            java.time.OffsetDateTime.parse("2027-01-01T00:00:00Z"));

    private CropCatalogue crops = CropCatalogue.bundled();

    @Test
    void quick_hardy_crops_are_offered_where_peppers_are_too_late_and_each_still_ripens() {
        List<Lot> box = List.of(
                lot("pepper", "Lantern Row", TOM), lot("kale", "Pier", TOM), lot("leaf-lettuce", "Cobble", TOM));

        List<StillInTime.Other> others = others(box, JULY);

        assertThat(verdict(peppers(), JULY)).isEqualTo(Verdict.TOO_LATE);
        assertThat(others).extracting(other -> other.crop().id()).containsExactlyInAnyOrder("kale", "leaf-lettuce");
        assertThat(others).allSatisfy(other -> {
            assertThat(other.sowBy()).isAfterOrEqualTo(JULY);
            assertThat(other.ripe()).isAfter(other.sowBy());
        });
        assertThat(others).extracting(StillInTime.Other::ripe).isSorted();
    }

    @Test
    void a_quick_variety_of_a_slow_crop_counts_by_its_own_days() {
        List<Lot> box = List.of(lot("tomato", "Short Season", TOM));
        LocalDate june = LocalDate.of(2027, 6, 20);
        assertThat(others(box, june)).isEmpty();

        crops = CropCatalogue.with(constant(new OwnHorticulture(List.of(), List.of(SHORT_SEASON))));

        assertThat(others(box, june))
                .singleElement()
                .satisfies(other -> assertThat(other.crop().maturity())
                        .contains(new DaysToMaturity(20, 25, Basis.TRANSPLANTING, true)));
    }

    @Test
    void of_one_variety_the_growers_own_lot_is_named() {
        List<Lot> box = List.of(lot("kale", "Pier", PRIYA), lot("kale", "Pier", TOM), lot("kale", "Pier", null));

        assertThat(others(box, JULY))
                .singleElement()
                .satisfies(other -> assertThat(other.lot().ownerId()).isEqualTo(TOM));
    }

    @Test
    void an_empty_box_offers_nothing() {
        assertThat(others(List.of(), JULY)).isEmpty();
    }

    private static java.util.function.Supplier<OwnHorticulture> constant(OwnHorticulture own) {
        return () -> own;
    }

    private SowingPlanner planner() {
        return new SowingPlanner(crops, new GrowerFrost(FrostSource.bundledOnly()));
    }

    private List<StillInTime.Other> others(List<Lot> box, LocalDate today) {
        return new StillInTime(planner(), crops, Hardiness::usualRisk).insteadOf(peppers(), box, today);
    }

    private Verdict verdict(Asking asking, LocalDate today) {
        Optional<Timeline> timeline = planner().timeline(asking, 26, today, Seen.nothing());
        return timeline.orElseThrow().verdict();
    }

    private static Asking peppers() {
        Sowing.Grower tom = new Sowing.Grower(TOM, "Tom", "US", "55804");
        return new Asking(tom, Crops.PEPPER, null, Method.CELLS, false, 2027, SeasonPart.SPRING, 0.1, null);
    }

    private static Lot lot(String crop, String variety, @Nullable UUID owner) {
        return new Lot(
                UUID.randomUUID(),
                crop,
                variety,
                2027,
                40,
                owner,
                owner == null ? null : "somebody",
                false,
                "",
                SeedSource.PACKET,
                Storage.UNKNOWN,
                0,
                1);
    }
}
