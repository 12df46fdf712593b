package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.Slot;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.SpaceWish;
import warmshelf.shelf.Thermostat;

class FreedSpaceFitTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final UUID PLACE = new UUID(1, 1);
    private static final UUID OTHER_PLACE = new UUID(1, 2);
    private static final MatSpace MAT =
            new MatSpace(new UUID(2, 1), "M1", "Hall cellar", new Thermostat(20, 32), 26, List.of(PLACE, OTHER_PLACE));

    private SpaceCalendar board;

    @BeforeEach
    void emptyBoard() {
        board = new SpaceCalendar(TODAY, TODAY.plusDays(100), List.of(MAT));
    }

    @Test
    void a_request_fits_into_freed_room_as_near_to_its_ideal_day_as_the_room_allows() {
        FreedSpaceFit.Fit fit = fit(wish(march(5), march(12), march(20)), freed(march(1), march(11)));

        assertThat(fit.spot().from()).isEqualTo(march(10));
        assertThat(fit.placeNumber()).isEqualTo(1);
        assertThat(fit.warm().celsius()).containsOnly(26.0);
    }

    @Test
    void room_on_another_place_is_not_offered_in_its_stead() {
        board.take(PLACE, new Slot(1, 4), march(1), march(30));

        assertThat(new FreedSpaceFit(board, TODAY)
                        .fit(wish(march(5), march(12), march(20)), List.of(freed(march(1), march(25)))))
                .isEmpty();
    }

    @Test
    void room_that_is_free_only_after_the_latest_start_is_no_help() {
        assertThat(new FreedSpaceFit(board, TODAY)
                        .fit(wish(march(5), march(8), march(10)), List.of(freed(march(15), march(25)))))
                .isEmpty();
    }

    @Test
    void the_mat_must_stand_at_a_temperature_that_suits() {
        board.setPoint(MAT.id(), march(1), march(40), 21);
        board.take(OTHER_PLACE, new Slot(1, 4), march(1), march(40));

        assertThat(new FreedSpaceFit(board, TODAY)
                        .fit(wish(march(5), march(8), march(10)), List.of(freed(march(1), march(25)))))
                .isEmpty();
    }

    private FreedSpaceFit.Fit fit(SpaceWish wish, FreedSpaceStore.Freed freed) {
        return new FreedSpaceFit(board, TODAY).fit(wish, List.of(freed)).orElseThrow();
    }

    private static SpaceWish wish(LocalDate earliest, LocalDate ideal, LocalDate latest) {
        return new SpaceWish(new UUID(3, 1), 2, earliest, ideal, latest, new Band(24, 30), celsius -> 14);
    }

    private static FreedSpaceStore.Freed freed(LocalDate from, LocalDate to) {
        return new FreedSpaceStore.Freed(MAT.id(), PLACE, 1, new Slot(1, 4), from, to);
    }

    private static LocalDate march(int day) {
        return TODAY.plusDays(day - 1L);
    }
}
