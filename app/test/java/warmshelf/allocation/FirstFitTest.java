package warmshelf.allocation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.DoubleToIntFunction;
import org.junit.jupiter.api.Test;
import warmshelf.shelf.LightAbove;
import warmshelf.shelf.Outage;
import warmshelf.shelf.Thermostat;

class FirstFitTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final LocalDate IDEAL = LocalDate.of(2027, 3, 15);
    private static final Band WARM = new Band(24, 30);
    private static final Slot WHOLE = new Slot(1, 4);
    private static final UUID FIRST = new UUID(1, 1);
    private static final UUID SECOND = new UUID(1, 2);
    private static final MatSpace MAT =
            new MatSpace(new UUID(0, 1), "M1", "Hall cellar", new Thermostat(20, 32), 26, List.of(FIRST, SECOND));
    private static final MatSpace ONE_PLACE =
            new MatSpace(new UUID(0, 2), "M2", "Garage", new Thermostat(20, 32), 26, List.of(new UUID(2, 1)));

    @Test
    void seed_that_needs_light_is_offered_lit_mats_first_then_those_nobody_has_spoken_of_and_no_dark_ones() {
        MatSpace dark = lit(5, LightAbove.NONE);
        MatSpace unspoken = lit(6, LightAbove.NOT_KNOWN);
        MatSpace lamp = lit(7, LightAbove.LAMP);
        SpaceCalendar board = new SpaceCalendar(TODAY, TODAY.plusDays(60), List.of(dark, unspoken, lamp));
        SpaceWish wish = new SpaceWish(new UUID(7, 1), 4, IDEAL, IDEAL, IDEAL, WARM, true, celsius -> 10);

        assertThat(fit(board).offers(wish, 9)).extracting(SpaceOffer::mat).containsExactly(lamp, unspoken);
    }

    @Test
    void where_every_mat_in_band_is_dark_that_is_the_reason() {
        SpaceCalendar board = new SpaceCalendar(TODAY, TODAY.plusDays(60), List.of(lit(5, LightAbove.NONE)));
        SpaceWish wish = new SpaceWish(new UUID(7, 1), 4, IDEAL, IDEAL, IDEAL, WARM, true, celsius -> 10);

        assertThat(fit(board).answer(wish)).isEqualTo(new SpaceAnswer.None(new NoSpace.AllDark(WARM)));
    }

    private static MatSpace lit(int number, LightAbove light) {
        return new MatSpace(
                new UUID(0, number),
                "M" + number,
                "Garage",
                new Thermostat(20, 32),
                26,
                light,
                List.of(new UUID(number, 1)));
    }

    @Test
    void an_empty_mat_is_offered_on_the_ideal_day_at_its_usual_set_point() {
        assertThat(fit(board(MAT)).offers(wish(4), 5))
                .containsExactly(new SpaceOffer(
                        MAT, FIRST, 1, WHOLE, WarmDays.throughout(IDEAL, IDEAL.plusDays(14), 26), 26, 0));
    }

    @Test
    void the_mat_that_is_free_nearest_to_the_ideal_day_comes_first() {
        SpaceCalendar board = board(MAT, ONE_PLACE);
        board.take(FIRST, WHOLE, IDEAL, IDEAL.plusDays(3));
        board.take(SECOND, WHOLE, IDEAL, IDEAL.plusDays(3));

        List<SpaceOffer> offers = fit(board).offers(wish(4), 5);

        assertThat(offers).extracting(SpaceOffer::mat).containsExactly(ONE_PLACE, MAT);
        assertThat(offers).extracting(SpaceOffer::shiftDays).containsExactly(0, 3);
        assertThat(fit(board).offers(wish(4), 1)).hasSize(1);
    }

    @Test
    void of_two_days_as_near_the_earlier_one_is_offered() {
        SpaceCalendar board = board(ONE_PLACE);
        board.take(new UUID(2, 1), WHOLE, IDEAL, IDEAL.plusDays(1));
        SpaceWish wish =
                new SpaceWish(new UUID(7, 1), 4, IDEAL.minusDays(5), IDEAL, IDEAL.plusDays(5), WARM, celsius -> 1);

        assertThat(fit(board).offers(wish, 1))
                .extracting(SpaceOffer::from, SpaceOffer::shiftDays)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(IDEAL.minusDays(1), -1));
    }

    @Test
    void nothing_is_offered_before_the_earliest_day_or_before_today() {
        SpaceCalendar full = board(ONE_PLACE);
        full.take(new UUID(2, 1), WHOLE, TODAY.plusDays(2), TODAY.plusDays(60));

        SpaceWish late = new SpaceWish(new UUID(7, 1), 4, TODAY.plusDays(1), IDEAL, IDEAL, WARM, celsius -> 1);
        SpaceWish past =
                new SpaceWish(new UUID(7, 1), 4, TODAY.minusDays(20), TODAY.minusDays(10), IDEAL, WARM, celsius -> 1);

        assertThat(fit(full).offers(late, 1)).extracting(SpaceOffer::from).containsExactly(TODAY.plusDays(1));
        assertThat(fit(full).offers(past, 1)).extracting(SpaceOffer::from).containsExactly(TODAY);
        assertThat(fit(full).offers(past, 1)).extracting(SpaceOffer::shiftDays).containsExactly(10);
    }

    @Test
    void bags_gather_in_the_fullest_place_and_leave_whole_ones_for_trays() {
        SpaceCalendar board = board(MAT);
        board.take(SECOND, new Slot(1, 1), TODAY, TODAY.plusDays(100));

        SpaceOffer bag = fit(board).offers(wish(1), 1).get(0);
        SpaceOffer tray = fit(board).offers(wish(4), 1).get(0);

        assertThat(bag.placeId()).isEqualTo(SECOND);
        assertThat(bag.placeNumber()).isEqualTo(2);
        assertThat(bag.slot()).isEqualTo(new Slot(2, 1));
        assertThat(tray.placeId()).isEqualTo(FIRST);
    }

    @Test
    void a_set_point_that_is_fixed_for_the_stay_is_kept() {
        SpaceCalendar board = board(MAT);
        board.setPoint(MAT.id(), IDEAL, IDEAL.plusDays(30), 29);

        assertThat(fit(board).offers(wish(4), 1))
                .extracting(offer -> offer.warm().first())
                .containsExactly(29.0);
    }

    @Test
    void a_set_point_fixed_only_later_in_the_stay_is_followed_from_then_on() {
        SpaceCalendar board = board(MAT);
        board.setPoint(MAT.id(), IDEAL.plusDays(5), IDEAL.plusDays(30), 28);

        assertThat(fit(board).offers(wish(4), 1))
                .extracting(offer -> offer.warm().runs(), SpaceOffer::shiftDays)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(
                        List.of(
                                new WarmDays.Run(IDEAL, IDEAL.plusDays(5), 26),
                                new WarmDays.Run(IDEAL.plusDays(5), IDEAL.plusDays(14), 28)),
                        0));
    }

    @Test
    void a_mat_that_is_turned_during_the_stay_is_offered_where_each_day_suits() {
        SpaceCalendar board = board(ONE_PLACE);
        board.setPoint(ONE_PLACE.id(), IDEAL, IDEAL.plusDays(4), 24);
        board.setPoint(ONE_PLACE.id(), IDEAL.plusDays(4), IDEAL.plusDays(30), 29);
        DoubleToIntFunction days = celsius -> celsius < 26 ? 20 : 10;

        // Four days of twenty are a fifth; eight of ten are the rest.
        assertThat(fit(board).offers(new SpaceWish(new UUID(7, 1), 4, IDEAL, IDEAL, IDEAL, WARM, days), 1))
                .extracting(offer -> offer.warm().key())
                .containsExactly("24x4,29x8");
    }

    @Test
    void an_empty_mat_that_was_set_by_hand_is_followed_where_it_suits_and_turned_where_not() {
        SpaceCalendar board = board(ONE_PLACE);
        board.makeReady(ONE_PLACE.id(), IDEAL, IDEAL.plusDays(4), 21);
        board.makeReady(ONE_PLACE.id(), IDEAL.plusDays(4), IDEAL.plusDays(8), 29);

        assertThat(fit(board).offers(wish(4), 1))
                .extracting(offer -> offer.warm().key())
                .containsExactly("24x4,29x4,24x6");
    }

    @Test
    void a_mat_that_goes_out_of_service_during_the_stay_is_not_offered() {
        SpaceCalendar board = board(ONE_PLACE);
        board.takeOut(new Outage(new UUID(5, 5), ONE_PLACE.id(), IDEAL.plusDays(13), IDEAL.plusDays(15), "broken"));

        assertThat(fit(board).offers(wish(4), 1)).extracting(SpaceOffer::from).containsExactly(IDEAL.minusDays(1));
    }

    @Test
    void a_mat_fixed_outside_the_band_is_not_offered_for_those_days() {
        SpaceCalendar board = board(MAT);
        board.setPoint(MAT.id(), IDEAL, IDEAL.plusDays(2), 21);

        assertThat(fit(board).offers(wish(4), 1)).extracting(SpaceOffer::from).containsExactly(IDEAL.plusDays(2));
    }

    @Test
    void the_usual_set_point_is_brought_into_the_band_and_the_thermostats_range() {
        MatSpace cool = new MatSpace(new UUID(0, 3), "M3", "Garage", new Thermostat(15, 25), 18, List.of(FIRST));
        MatSpace hot = new MatSpace(new UUID(0, 4), "M4", "Garage", new Thermostat(29, 40), 35, List.of(SECOND));

        assertThat(fit(board(cool)).offers(wish(4), 1))
                .extracting(offer -> offer.warm().first())
                .containsExactly(24.0);
        assertThat(fit(board(hot)).offers(wish(4), 1))
                .extracting(offer -> offer.warm().first())
                .containsExactly(30.0);
    }

    @Test
    void a_cooler_mat_means_a_longer_stay() {
        DoubleToIntFunction slowerWhenCool = celsius -> celsius < 26 ? 20 : 10;
        SpaceCalendar cool = board(MAT);
        cool.setPoint(MAT.id(), TODAY, TODAY.plusDays(90), 24);
        SpaceWish wish = new SpaceWish(new UUID(7, 1), 4, TODAY, IDEAL, IDEAL.plusDays(20), WARM, slowerWhenCool);

        assertThat(fit(cool).offers(wish, 1)).extracting(SpaceOffer::to).containsExactly(IDEAL.plusDays(20));
        assertThat(fit(board(MAT)).offers(wish, 1)).extracting(SpaceOffer::to).containsExactly(IDEAL.plusDays(10));
    }

    @Test
    void where_no_thermostat_reaches_the_band_the_reason_says_so() {
        MatSpace cool = new MatSpace(new UUID(0, 3), "M3", "Garage", new Thermostat(15, 23), 18, List.of(FIRST));

        assertThat(fit(board(cool)).answer(wish(4))).isEqualTo(new SpaceAnswer.None(new NoSpace.NoMatInBand(WARM)));
        assertThat(fit(board()).answer(wish(4))).isEqualTo(new SpaceAnswer.None(new NoSpace.NoMatInBand(WARM)));
    }

    @Test
    void where_all_is_taken_the_reason_names_the_days_looked_at() {
        SpaceCalendar full = board(MAT);
        full.take(FIRST, new Slot(2, 1), TODAY, TODAY.plusDays(90));
        full.take(SECOND, new Slot(3, 1), TODAY, TODAY.plusDays(90));

        assertThat(fit(full).answer(wish(4)))
                .isEqualTo(new SpaceAnswer.None(new NoSpace.Full(IDEAL.minusDays(5), IDEAL.plusDays(20))));
        assertThat(fit(full).answer(wish(1))).isInstanceOf(SpaceAnswer.Space.class);
    }

    @Test
    void after_the_latest_day_it_is_too_late_however_empty_the_mats_are() {
        SpaceWish wish = new SpaceWish(
                new UUID(7, 1), 4, TODAY.minusDays(20), TODAY.minusDays(10), TODAY.minusDays(1), WARM, celsius -> 14);

        assertThat(fit(board(MAT)).answer(wish))
                .isEqualTo(new SpaceAnswer.None(new NoSpace.TooLate(TODAY.minusDays(1))));
    }

    @Test
    void the_latest_day_itself_is_not_too_late() {
        SpaceWish wish =
                new SpaceWish(new UUID(7, 1), 4, TODAY.minusDays(20), TODAY.minusDays(10), TODAY, WARM, celsius -> 14);

        assertThat(fit(board(MAT)).offers(wish, 1)).extracting(SpaceOffer::from).containsExactly(TODAY);
    }

    @Test
    void many_are_answered_by_ideal_day_and_each_takes_its_space_before_the_next() {
        SpaceWish later =
                new SpaceWish(new UUID(7, 1), 4, IDEAL, IDEAL.plusDays(1), IDEAL.plusDays(1), WARM, celsius -> 14);
        SpaceWish sooner = new SpaceWish(new UUID(7, 2), 4, IDEAL, IDEAL, IDEAL, WARM, celsius -> 14);
        SpaceCalendar board = board(ONE_PLACE);

        Map<UUID, SpaceAnswer> answers = fit(board).answerAll(List.of(later, sooner));

        assertThat(answers.keySet()).containsExactly(sooner.sowingId(), later.sowingId());
        assertThat(answers.get(sooner.sowingId())).isInstanceOf(SpaceAnswer.Space.class);
        assertThat(answers.get(later.sowingId()))
                .isEqualTo(new SpaceAnswer.None(new NoSpace.Full(IDEAL, IDEAL.plusDays(1))));
        assertThat(board.isFree(new UUID(2, 1), WHOLE, IDEAL, IDEAL.plusDays(1)))
                .isFalse();
    }

    private static SpaceCalendar board(MatSpace... mats) {
        return new SpaceCalendar(TODAY, TODAY.plusDays(90), List.of(mats));
    }

    private static FirstFit fit(SpaceCalendar board) {
        return new FirstFit(board, TODAY);
    }

    private static SpaceWish wish(int quarters) {
        return new SpaceWish(
                new UUID(7, quarters), quarters, IDEAL.minusDays(5), IDEAL, IDEAL.plusDays(20), WARM, celsius -> 14);
    }
}
