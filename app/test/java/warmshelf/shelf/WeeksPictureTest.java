package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import warmshelf.shelf.WeeksPicture.BandPicture;
import warmshelf.shelf.WeeksPicture.Bar;
import warmshelf.shelf.WeeksPicture.RowPicture;
import warmshelf.shelf.WeeksPicture.WarmRun;

class WeeksPictureTest {
    private static final LocalDate MONDAY = LocalDate.of(2027, 3, 8);
    /** Four weeks fill the width. */
    private static final int DAY = WeeksPicture.WIDTH / 28;

    @Test
    void a_stay_begins_on_its_first_day_and_ends_before_its_to_day() {
        Bar bar = onlyBar(DrawnCellar.stay(1, 1, 4, MONDAY.plusDays(2), MONDAY.plusDays(9)));

        assertThat(bar.box().x()).isEqualTo(2 * DAY);
        assertThat(bar.box().width()).isEqualTo(7 * DAY);
        assertThat(bar.begun()).isFalse();
    }

    @Test
    void a_stay_that_began_earlier_is_cut_at_the_first_day_and_says_so() {
        Bar bar = onlyBar(DrawnCellar.stay(1, 1, 4, MONDAY.minusDays(5), MONDAY.plusDays(7)));

        assertThat(bar.box().x()).isZero();
        assertThat(bar.box().width()).isEqualTo(7 * DAY);
        assertThat(bar.begun()).isTrue();
        assertThat(bar.text()).startsWith("…");
    }

    @Test
    void a_stay_that_goes_on_is_cut_at_the_last_day() {
        Bar bar = onlyBar(DrawnCellar.stay(1, 1, 4, MONDAY.plusDays(21), MONDAY.plusDays(60)));

        assertThat(bar.box().x() + bar.box().width()).isEqualTo(28 * DAY);
    }

    @Test
    void a_stay_that_ends_as_the_weeks_begin_is_not_drawn() {
        assertThat(row(DrawnCellar.stay(1, 1, 4, MONDAY.minusDays(9), MONDAY)).bars())
                .isEmpty();
    }

    @Test
    void a_stay_that_begins_as_the_weeks_end_is_not_drawn() {
        assertThat(row(DrawnCellar.stay(1, 1, 4, MONDAY.plusDays(28), MONDAY.plusDays(30)))
                        .bars())
                .isEmpty();
    }

    @Test
    void what_has_ended_by_today_is_drawn_and_said_to_be_over() {
        StayOnBoard stay = DrawnCellar.stay(1, 1, 4, MONDAY, MONDAY.plusDays(4));

        assertThat(mat(picture(MONDAY.plusDays(4), stay))
                        .rows()
                        .get(0)
                        .bars()
                        .get(0)
                        .over())
                .isTrue();
        assertThat(mat(picture(MONDAY.plusDays(3), stay))
                        .rows()
                        .get(0)
                        .bars()
                        .get(0)
                        .over())
                .isFalse();
    }

    @Test
    void a_place_gets_as_many_lanes_as_its_stays_need() {
        assertThat(row(DrawnCellar.stay(1, 1, 4, MONDAY, MONDAY.plusDays(7))).lanes())
                .isEqualTo(1);
        assertThat(row(DrawnCellar.stay(1, 3, 2, MONDAY, MONDAY.plusDays(7))).lanes())
                .isEqualTo(2);
        assertThat(row(DrawnCellar.stay(1, 4, 1, MONDAY, MONDAY.plusDays(7))).lanes())
                .isEqualTo(4);
    }

    @Test
    void a_half_tray_on_the_right_lies_below_a_bag_on_quarter_2() {
        RowPicture row = row(
                DrawnCellar.stay(1, 2, 1, MONDAY, MONDAY.plusDays(7)),
                DrawnCellar.stay(1, 3, 2, MONDAY, MONDAY.plusDays(7)));

        Box bag = row.bars().get(0).box();
        Box half = row.bars().get(1).box();
        assertThat(half.y()).isGreaterThan(bag.y() + bag.height());
        assertThat(half.height()).isGreaterThan(bag.height());
        assertThat(half.y() + half.height()).isLessThanOrEqualTo(row.y() + row.height());
    }

    @Test
    void set_points_are_drawn_as_runs_of_days_with_gaps_where_nothing_is_heated() {
        Map<LocalDate, Double> days =
                Map.of(MONDAY, 24.0, MONDAY.plusDays(1), 24.0, MONDAY.plusDays(2), 27.0, MONDAY.plusDays(5), 27.0);
        Board board = new Board(List.of(), new SetPoints(Map.of(DrawnCellar.M1, days)), List.of());

        List<WarmRun> runs = mat(WeeksPicture.of(DrawnCellar.sites(), board, MONDAY, 4, MONDAY))
                .warm();

        assertThat(runs)
                .containsExactly(
                        new WarmRun(0, 2 * DAY, 24, WarmScale.WARM),
                        new WarmRun(2 * DAY, DAY, 27, WarmScale.HOT),
                        new WarmRun(5 * DAY, DAY, 27, WarmScale.HOT));
    }

    @Test
    void days_out_of_service_are_drawn_with_their_last_day_and_are_not_warm() {
        Map<LocalDate, Double> days = Map.of(MONDAY, 24.0, MONDAY.plusDays(3), 24.0, MONDAY.plusDays(20), 24.0);
        Outage running = new Outage(
                new java.util.UUID(5, 5), DrawnCellar.M1, MONDAY.minusDays(3), MONDAY.plusDays(14), "broken plug");
        Outage last =
                new Outage(new java.util.UUID(5, 6), DrawnCellar.M1, MONDAY.plusDays(27), MONDAY.plusDays(40), "lent");
        Board board = new Board(List.of(), new SetPoints(Map.of(DrawnCellar.M1, days)), List.of(running, last));

        WeeksPicture.BandPicture band = mat(WeeksPicture.of(DrawnCellar.sites(), board, MONDAY, 4, MONDAY));

        assertThat(band.warm()).containsExactly(new WarmRun(20 * DAY, DAY, 24, WarmScale.WARM));
        assertThat(band.out())
                .extracting(WeeksPicture.OutRun::x, WeeksPicture.OutRun::width)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(0, 14 * DAY),
                        org.assertj.core.groups.Tuple.tuple(27 * DAY, DAY));
        assertThat(band.out().get(0).text())
                .isEqualTo("out of service to " + warmshelf.words.DayWords.day(MONDAY.plusDays(13)));
        assertThat(band.out().get(1).text())
                .as("a single day has room for a word")
                .isEqualTo("out");
        assertThat(band.out().get(1).words()).contains("Mat M1, out of service from", "lent");
    }

    @Test
    void a_set_point_that_lasts_reaches_the_end() {
        Map<LocalDate, Double> days = new java.util.HashMap<>();
        for (int day = 0; day < 40; day++) {
            days.put(MONDAY.plusDays(day), 30.0);
        }
        Board board = new Board(List.of(), new SetPoints(Map.of(DrawnCellar.M1, days)), List.of());

        assertThat(mat(WeeksPicture.of(DrawnCellar.sites(), board, MONDAY, 4, MONDAY))
                        .warm())
                .containsExactly(new WarmRun(0, 28 * DAY, 30, WarmScale.VERY_HOT));
    }

    @Test
    void today_is_marked_only_where_it_is_shown() {
        assertThat(picture(MONDAY.plusDays(3)).todayX()).isEqualTo(3 * DAY);
        assertThat(picture(MONDAY.minusDays(1)).todayX()).isNull();
        assertThat(picture(MONDAY.plusDays(28)).todayX()).isNull();
    }

    @Test
    void places_come_in_walking_order_and_never_overlap() {
        WeeksPicture picture = picture(MONDAY);

        assertThat(picture.bands())
                .extracting(BandPicture::name)
                .containsExactly("A · 1 · light", "A · 2 · M1", "A · 2 · M2");
        int end = 0;
        for (BandPicture band : picture.bands()) {
            assertThat(band.y()).isGreaterThanOrEqualTo(end);
            end = band.y() + band.height();
        }
        assertThat(picture.height()).isGreaterThanOrEqualTo(end);
    }

    @Test
    void however_many_weeks_are_chosen_they_fill_the_same_width_and_what_has_no_room_is_left_out() {
        for (int weeks : WeeksPage.LENGTHS) {
            WeeksPicture picture = WeeksPicture.of(
                    DrawnCellar.sites(), DrawnCellar.board(), MONDAY, weeks, MONDAY.plusDays(7L * weeks - 1));

            assertThat(picture.todayX())
                    .as("%d weeks", weeks)
                    .isBetween(WeeksPicture.WIDTH - 38, WeeksPicture.WIDTH - 5);
            assertThat(picture.heads()).hasSize(weeks);
            assertThat(picture.days()).hasSize(weeks <= 8 ? 7 * weeks : 0);
        }
    }

    @Test
    void a_bag_of_a_day_or_two_is_drawn_with_corners_where_round_ones_have_no_room() {
        assertThat(new Box(0, 0, 9, 20).roundOutline()).isEqualTo(new Box(0, 0, 9, 20).outline());
    }

    private static WeeksPicture picture(LocalDate today, StayOnBoard... stays) {
        return WeeksPicture.of(DrawnCellar.sites(), DrawnCellar.board(stays), MONDAY, 4, today);
    }

    private static BandPicture mat(WeeksPicture picture) {
        return picture.bands().get(1);
    }

    private static RowPicture row(StayOnBoard... stays) {
        return mat(picture(MONDAY, stays)).rows().get(0);
    }

    private static Bar onlyBar(StayOnBoard stay) {
        List<Bar> bars = row(stay).bars();
        assertThat(bars).hasSize(1);
        return bars.get(0);
    }
}
