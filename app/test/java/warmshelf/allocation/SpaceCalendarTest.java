package warmshelf.allocation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.shelf.Outage;
import warmshelf.shelf.Thermostat;

class SpaceCalendarTest {
    private static final LocalDate FROM = LocalDate.of(2028, 2, 27);
    private static final LocalDate TO = LocalDate.of(2028, 3, 5);
    private static final UUID PLACE = new UUID(1, 1);
    private static final UUID OTHER = new UUID(1, 2);
    private static final MatSpace MAT =
            new MatSpace(new UUID(0, 1), "M1", "Hall cellar", new Thermostat(20, 32), 26, List.of(PLACE, OTHER));
    private static final Slot WHOLE = new Slot(1, 4);
    private static final Slot LEFT = new Slot(1, 2);
    private static final Slot RIGHT = new Slot(3, 2);

    private final SpaceCalendar board = new SpaceCalendar(FROM, TO, List.of(MAT));

    @Test
    void the_last_day_of_a_stay_is_the_one_before_its_end() {
        board.take(PLACE, WHOLE, day(2, 28), day(3, 2));

        // 2028 is a leap year: 28 and 29 February and 1 March are taken.
        assertThat(FROM.datesUntil(TO).filter(day -> board.takenQuarters(PLACE, day) > 0))
                .containsExactly(day(2, 28), day(2, 29), day(3, 1));
        assertThat(board.isFree(PLACE, WHOLE, day(3, 2), day(3, 4))).isTrue();
        assertThat(board.isFree(PLACE, WHOLE, day(2, 27), day(2, 28))).isTrue();
        assertThat(board.isFree(PLACE, WHOLE, day(3, 1), day(3, 2))).isFalse();
    }

    @Test
    void one_half_taken_leaves_the_other_half_and_its_quarters_free() {
        board.take(PLACE, LEFT, FROM, TO);

        assertThat(board.isFree(PLACE, RIGHT, FROM, TO)).isTrue();
        assertThat(board.isFree(PLACE, new Slot(4, 1), FROM, TO)).isTrue();
        assertThat(board.isFree(PLACE, new Slot(2, 1), FROM, TO)).isFalse();
        assertThat(board.isFree(PLACE, WHOLE, FROM, TO)).isFalse();
        assertThat(board.isFree(OTHER, WHOLE, FROM, TO)).isTrue();
        assertThat(board.takenQuarters(PLACE, FROM)).isEqualTo(2);
    }

    @Test
    void what_reaches_outside_the_days_looked_at_is_never_free() {
        assertThat(board.isFree(PLACE, WHOLE, FROM, TO)).isTrue();
        assertThat(board.isFree(PLACE, WHOLE, FROM.minusDays(1), TO)).isFalse();
        assertThat(board.isFree(PLACE, WHOLE, FROM, TO.plusDays(1))).isFalse();
        assertThat(board.isFree(new UUID(9, 9), WHOLE, FROM, TO)).isFalse();
    }

    @Test
    void what_lies_partly_outside_the_days_looked_at_counts_on_the_days_within() {
        board.take(PLACE, WHOLE, FROM.minusDays(10), FROM.plusDays(1));
        board.take(OTHER, WHOLE, TO.minusDays(1), TO.plusDays(10));
        board.take(new UUID(9, 9), WHOLE, FROM, TO);

        assertThat(board.takenQuarters(PLACE, FROM)).isEqualTo(4);
        assertThat(board.takenQuarters(PLACE, FROM.plusDays(1))).isZero();
        assertThat(board.takenQuarters(OTHER, TO.minusDays(1))).isEqualTo(4);
        assertThat(board.takenQuarters(OTHER, TO)).isZero();
        assertThat(board.takenQuarters(PLACE, FROM.minusDays(1))).isZero();
    }

    @Test
    void a_set_point_is_fixed_on_its_days_and_an_empty_mat_stands_ready_beside_it() {
        board.setPoint(MAT.id(), day(2, 29), day(3, 2), 24);

        assertThat(board.setPoint(MAT.id(), day(2, 28))).isEmpty();
        assertThat(board.setPoint(MAT.id(), day(2, 29))).hasValue(24);
        assertThat(board.setPoint(MAT.id(), day(3, 1))).hasValue(24);
        assertThat(board.setPoint(MAT.id(), day(3, 2))).isEmpty();
        board.makeReady(MAT.id(), day(3, 1), day(3, 3), 26);
        assertThat(board.readyAt(MAT.id(), day(3, 2))).hasValue(26);
        assertThat(board.readyAt(MAT.id(), day(2, 29))).isEmpty();
        assertThat(board.setPoint(MAT.id(), day(3, 1))).hasValue(24);
        assertThat(board.setPoint(new UUID(9, 9), day(3, 1))).isEmpty();
    }

    @Test
    void a_mat_out_of_service_has_no_free_place_on_those_days_and_tells_the_reason() {
        Outage outage = new Outage(new UUID(5, 5), MAT.id(), day(2, 29), day(3, 2), "the thermostat is broken");
        board.takeOut(outage);
        board.takeOut(new Outage(new UUID(5, 5), new UUID(9, 9), FROM, TO, "not one of these mats"));

        assertThat(board.isFree(PLACE, LEFT, FROM, day(2, 29))).isTrue();
        assertThat(board.isFree(PLACE, LEFT, FROM, day(3, 1))).isFalse();
        assertThat(board.isFree(OTHER, RIGHT, day(3, 1), day(3, 3))).isFalse();
        assertThat(board.isFree(OTHER, RIGHT, day(3, 2), TO)).isTrue();
        assertThat(board.outages(MAT.id())).containsExactly(outage);
    }

    @Test
    void an_accepted_offer_takes_its_quarters_and_fixes_its_set_point() {
        board.accept(new SpaceOffer(MAT, PLACE, 1, RIGHT, WarmDays.throughout(day(2, 28), day(3, 1), 27), 27, 0));

        assertThat(board.isFree(PLACE, RIGHT, day(2, 29), day(3, 1))).isFalse();
        assertThat(board.isFree(PLACE, LEFT, day(2, 28), day(3, 1))).isTrue();
        assertThat(board.setPoint(MAT.id(), day(2, 29))).hasValue(27);
        assertThat(board.setPoint(MAT.id(), day(3, 1))).isEmpty();
    }

    private static LocalDate day(int month, int day) {
        return LocalDate.of(2028, month, day);
    }
}
