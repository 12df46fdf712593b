package warmshelf.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import warmshelf.frost.FrostClimate;
import warmshelf.frost.FrostEvidence;
import warmshelf.frost.FrostSeason;
import warmshelf.timeline.SeasonPicture.Bar;
import warmshelf.timeline.SeasonPicture.Head;
import warmshelf.timeline.SeasonPicture.Mark;
import warmshelf.timeline.SeasonPicture.Row;
import warmshelf.words.Units;

class SeasonPictureTest {
    private static final LocalDate TODAY = day(4, 12);

    private final List<TimelineStep> steps = new ArrayList<>();

    @Test
    void bars_follow_each_other_from_sowing_until_two_weeks_out() {
        Row row = only(peppers(true));

        assertThat(row.bars())
                .extracting(Bar::style, Bar::label, Bar::from, Bar::to, Bar::open)
                .containsExactly(
                        tuple("heat-hot", "heat", day(3, 26), day(4, 5), false),
                        tuple("light", "light", day(4, 5), day(5, 24), false),
                        tuple("hardening", "harden", day(5, 24), day(6, 2), false),
                        tuple("out", "out", day(6, 2), day(6, 16), true));
    }

    @Test
    void days_stand_six_pixels_apart_from_the_monday_before_the_first_step() {
        SeasonPicture picture = picture(peppers(true), null, TODAY);

        // 22 March 2027 is a Monday; the 26th is four days on
        assertThat(picture.from()).isEqualTo(day(3, 22));
        assertThat(picture.rows().get(0).bars().get(0))
                .extracting(Bar::x, Bar::width)
                .containsExactly(24, 60);
        assertThat(picture.todayX()).isEqualTo(21 * 6 + 3);
        // the last thing drawn ends on 16 June, a Wednesday
        assertThat(picture.to()).isEqualTo(day(6, 21));
        assertThat(picture.width()).isEqualTo(91 * 6);
        assertThat(picture.height()).isEqualTo(40 + 48);
    }

    @Test
    void months_stand_at_their_first_day_and_mondays_each_week() {
        SeasonPicture picture = picture(peppers(true), null, TODAY);

        assertThat(picture.months())
                .containsExactly(
                        new Head(0, "Mar"), new Head(10 * 6, "Apr"), new Head(40 * 6, "May"), new Head(71 * 6, "Jun"));
        assertThat(picture.mondays()).hasSize(13).contains(new Head(42, "29"), new Head(84, "5"));
    }

    @Test
    void a_month_of_which_no_week_is_left_does_not_run_into_the_next() {
        step(Step.SOW, day(3, 29), null);
        step(Step.LIGHT, day(4, 20), null);

        // from Monday, 29 March
        assertThat(picture(growing(true), null, TODAY).months().get(0)).isEqualTo(new Head(18, "Apr"));
    }

    @Test
    void one_mark_is_next_those_before_are_done_and_those_after_to_come() {
        Row row = only(peppers(true));

        assertThat(row.done()).extracting(Mark::title).containsExactly("Sow", "Off the heat", "Under the light");
        assertThat(row.toCome())
                .extracting(Mark::title, Mark::next, Mark::day)
                .containsExactly(
                        tuple("First feed", true, day(4, 17)),
                        tuple("Begin hardening off", false, day(5, 24)),
                        tuple("Plant out", false, day(6, 2)));
    }

    @Test
    void what_is_done_is_drawn_on_the_day_it_happened() {
        step(Step.SOW, day(3, 26), day(3, 30));
        step(Step.LIGHT, day(4, 8), null);

        Row row = only(growing(false));

        assertThat(row.bars().get(0).from()).isEqualTo(day(3, 30));
        assertThat(row.marks().get(0).day()).isEqualTo(day(3, 30));
    }

    @Test
    void without_a_mat_nothing_is_on_the_heat() {
        assertThat(only(peppers(false)).bars())
                .extracting(Bar::style)
                .containsExactly("room", "light", "hardening", "out");
    }

    @Test
    void seed_off_the_heat_and_not_up_yet_is_in_the_room_in_between() {
        step(Step.SOW, day(3, 26), day(3, 26));
        step(Step.MOVE_TO_CELLS, day(4, 2), day(4, 2));
        step(Step.OFF_HEAT, day(4, 2), day(4, 2));
        step(Step.LIGHT, day(4, 6), null);

        assertThat(only(growing(true)).bars())
                .extracting(Bar::words, Bar::from)
                .containsExactly(
                        tuple("on the heat", day(3, 26)),
                        tuple("in the room", day(4, 2)),
                        tuple("under the light", day(4, 6)));
    }

    @Test
    void what_was_fed_stands_under_a_light_even_if_nobody_noted_that() {
        step(Step.FIRST_FEED, day(4, 17), day(4, 17));
        step(Step.HARDEN_OFF, day(5, 24), null);

        assertThat(only(growing(true)).bars())
                .extracting(Bar::words)
                .containsExactly("under the light", "hardening off");
    }

    @Test
    void the_earliest_sowing_comes_first() {
        Growing later = peppers(true);
        steps.clear();
        step(Step.SOW, day(2, 20), null);
        step(Step.LIGHT, day(3, 10), null);
        Growing earlier = growing(true);

        List<Row> rows = SeasonPicture.of(List.of(later, earlier), null, 2027, TODAY)
                .orElseThrow()
                .rows();

        assertThat(rows).extracting(Row::y).containsExactly(40, 88);
        assertThat(rows.get(0).bars().get(0).from()).isEqualTo(day(2, 20));
    }

    /**
     * By hand from a table of the normal distribution: the last frost is normal around day 130 (10 May) with a spread of 10
     * days, so 30 % of springs have one after day 130 + 5.24 (15 May) and 10 % after day 130 + 12.82 (23 May).
     */
    @Test
    void frost_is_shaded_by_the_chance_of_another_one() {
        SeasonPicture picture = picture(peppers(true), climate(1, 130), TODAY);

        assertThat(picture.frost())
                .extracting(shade -> shade.risk().level(), shade -> shade.risk().until())
                .containsExactly(tuple(3, day(5, 10)), tuple(2, day(5, 15)), tuple(1, day(5, 23)));
        assertThat(picture.frost())
                .extracting(SeasonPicture.Shade::x, SeasonPicture.Shade::width)
                .containsExactly(tuple(0, 50 * 6), tuple(50 * 6, 5 * 6), tuple(55 * 6, 8 * 6));
    }

    /**
     * By hand from the same table: the first frost of autumn is normal around day 280 (7 October), so a tenth of autumns have one
     * by day 280 - 12.82 (24 September) and three tenths by day 280 - 5.24 (2 October).
     */
    @Test
    void towards_its_end_frost_is_shaded_by_the_chance_that_the_first_one_has_come() {
        step(Step.SOW, day(8, 1), null);
        step(Step.PLANT_OUT, day(10, 6), null);

        SeasonPicture picture = picture(growing(false), climate(1, 130), TODAY);

        assertThat(picture.springFrost()).isEmpty();
        assertThat(picture.autumnFrost())
                .extracting(shade -> shade.risk().level(), shade -> shade.risk().from())
                .containsExactly(tuple(1, day(9, 24)), tuple(2, day(10, 2)), tuple(3, day(10, 7)));
        assertThat(picture.autumnFrost())
                .extracting(SeasonPicture.Shade::width)
                .as("8 days, 5 days, and from 7 October to the end of the picture on Monday 25 October")
                .containsExactly(8 * 6, 5 * 6, 18 * 6);
    }

    @Test
    void over_winter_the_shades_darken_and_lighten_again() {
        step(Step.SOW, day(8, 1), null);
        step(Step.PLANT_OUT, LocalDate.of(2028, 6, 1), null);

        SeasonPicture picture = picture(growing(false), climate(1, 130), TODAY);

        assertThat(picture.frost()).extracting(shade -> shade.risk().level()).containsExactly(1, 2, 3, 3, 2, 1);
        assertThat(picture.springFrost().get(2).risk().until()).isEqualTo(LocalDate.of(2028, 5, 23));
    }

    @Test
    void where_frost_is_over_or_rare_or_unknown_nothing_is_shaded() {
        assertThat(picture(peppers(true), climate(1, 40), TODAY).frost()).isEmpty();
        assertThat(picture(peppers(true), climate(0.05, 130), TODAY).frost()).isEmpty();
        assertThat(picture(peppers(true), null, TODAY).frost()).isEmpty();
        assertThat(picture(peppers(true), climate(0.4, 130), TODAY).frost())
                .as("too rare to come after any day in half of the years")
                .extracting(shade -> shade.risk().level())
                .containsExactly(2, 1);
    }

    @Test
    void today_is_shown_up_to_four_weeks_ahead_of_the_season() {
        assertThat(picture(peppers(true), null, day(3, 1)).todayX()).isEqualTo(3);
        assertThat(picture(peppers(true), null, day(2, 1)).todayX()).isNull();
        assertThat(picture(peppers(true), null, day(8, 1)).todayX()).isNull();
    }

    @Test
    void a_season_that_leaves_no_time_is_not_drawn() {
        assertThat(SeasonPicture.of(List.of(growing(true)), null, 2027, TODAY)).isEmpty();
        assertThat(SeasonPicture.of(List.of(), null, 2027, TODAY)).isEmpty();
    }

    /** Sown on 26 March, under the light since 5 April, to go out on 2 June. */
    private Growing peppers(boolean warm) {
        step(Step.SOW, day(3, 26), day(3, 26));
        if (warm) {
            step(Step.OFF_HEAT, day(4, 5), day(4, 5));
        }
        step(Step.LIGHT, day(4, 5), day(4, 5));
        step(Step.FIRST_FEED, day(4, 17), null);
        step(Step.HARDEN_OFF, day(5, 24), null);
        step(Step.PLANT_OUT, day(6, 2), null);
        step(Step.RIPE, day(8, 10), null);
        return growing(warm);
    }

    private void step(Step step, LocalDate ideal, @Nullable LocalDate done) {
        steps.add(new TimelineStep(
                step, ideal, ideal, ideal, new Reason("steps/light", "why in cells", Map.of(), Units.METRIC), done));
    }

    private Growing growing(boolean warm) {
        return new Growing(
                new UUID(1, 1),
                "Pepper",
                "Lantern Row",
                warm,
                26,
                new Timeline(
                        Verdict.IN_TIME,
                        List.copyOf(steps),
                        10,
                        List.of(),
                        Optional.empty(),
                        Optional.empty(),
                        new SeasonFacts(
                                SeasonPart.SPRING,
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty()),
                        Optional.empty()));
    }

    private static Row only(Growing growing) {
        return picture(growing, null, TODAY).rows().get(0);
    }

    private static SeasonPicture picture(Growing growing, @Nullable FrostClimate climate, LocalDate today) {
        return SeasonPicture.of(List.of(growing), climate, 2027, today).orElseThrow();
    }

    private static FrostClimate climate(double anyFrost, double medianDay) {
        FrostSeason spring = new FrostSeason(anyFrost, medianDay, 0, 0, 10, 0, 0);
        FrostSeason autumn = new FrostSeason(1, 280, 0, 0, 10, 0, 0);
        return new FrostClimate(
                "a garden", 46, -92, 200, spring, autumn, new FrostEvidence(null, List.of(), 0, null, List.of()));
    }

    private static LocalDate day(int month, int day) {
        return LocalDate.of(2027, month, day);
    }
}
