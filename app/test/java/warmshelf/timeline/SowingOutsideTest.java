package warmshelf.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.UsualSowing;
import warmshelf.testing.Crops;
import warmshelf.words.Units;

class SowingOutsideTest {
    private static final LocalDate MAY_24 = LocalDate.of(2027, 5, 24);

    // Harrington and Minges (1954): corn comes up after 12 days at 59 °F and 7 at 68 °F, and so after 11 and a bit at
    // 60 °F.
    @Test
    void seed_is_sown_outside_so_that_it_comes_up_when_plants_may_stand_there() {
        SowingOutside corn = outside("sweet-corn", Units.AMERICAN);

        assertThat(corn.from()).isEqualTo(MAY_24.minusDays(11));
        assertThat(corn.title()).isEqualTo("Usually sown where it grows");
        assertThat(corn.why())
                .isEqualTo(
                        "Its roots bear no moving, so it is usually sown where it grows, from about 13 May, once the soil is"
                                + " 60 °F or warmer.");
        assertThat(corn.how()).contains("a pot of its own that rots");
    }

    @Test
    void no_seed_comes_up_outside_before_its_plants_may_stand_there() {
        int told = 0;
        for (Crop crop : CropCatalogue.bundled().fromSeed()) {
            Timeline timeline = Asked.of(crop, 22, MAY_24).answered();
            assertThat(timeline.outside().isPresent())
                    .isEqualTo(UsualSowing.of(crop).isPresent());
            if (timeline.outside().isPresent()) {
                LocalDate from = timeline.outside().get().from();
                LocalDate out = PlantingOutWindow.of(Asked.of(crop, 22, MAY_24).question())
                        .days()
                        .ideal();
                assertThat(from).as(crop.id()).isBetween(out.minusDays(31), out);
                told++;
            }
        }
        assertThat(told).isGreaterThan(10);
    }

    @Test
    void what_does_not_bear_moving_is_not_potted_on() {
        for (Crop crop : CropCatalogue.bundled().fromSeed()) {
            if (UsualSowing.of(crop).isPresent()) {
                assertThat(Asked.of(crop, 22, MAY_24).answered().step(Step.POT_ON))
                        .as(crop.id())
                        .isEmpty();
            }
        }
    }

    @Test
    void under_cover_no_frost_tells_the_day() {
        SowingOutside squash = Asked.of(Crops.of("winter-squash"), 26, new PlantingOut.UnderCover(MAY_24))
                .answered()
                .outside()
                .orElseThrow();

        assertThat(squash.from()).isNull();
        assertThat(squash.why()).isEqualTo("Its roots bear no breaking: plant it with its pot.");
    }

    @Test
    void for_autumn_no_day_is_named_because_spring_frosts_do_not_tell_it() {
        FrostDates dates = FrostDates.of(MAY_24, LocalDate.of(2027, 9, 28));
        SowingOutside beet = Asked.of(Crops.of("beet"), 22, new PlantingOut.ByFrost(dates, SeasonPart.AUTUMN))
                .on(LocalDate.of(2027, 6, 1))
                .answered()
                .outside()
                .orElseThrow();

        assertThat(beet.from()).isNull();
    }

    @Test
    void once_it_is_sown_nothing_is_said_of_it() {
        Timeline sown = Asked.of(Crops.of("sweet-corn"), 26, MAY_24)
                .having(Seen.sownOn(LocalDate.of(2027, 5, 3)))
                .on(LocalDate.of(2027, 5, 3))
                .answered();

        assertThat(sown.outside()).isEmpty();
    }

    private static SowingOutside outside(String crop, Units units) {
        return Asked.of(Crops.of(crop), 26, MAY_24)
                .readIn(units)
                .answered()
                .outside()
                .orElseThrow();
    }
}
