package warmshelf.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.SeedTreatment;
import warmshelf.testing.Crops;
import warmshelf.words.Units;

class ColdSpellTest {
    private static final Crop LAVENDER = Crops.of("lavender");
    private static final LocalDate MAY_24 = LocalDate.of(2027, 5, 24);

    // Common practice, as the reference has it: two to four weeks cold and moist. Garden pages read beside it say three
    // to six.
    @Test
    void the_weeks_of_cold_come_before_the_day_of_sowing() {
        Asked lavender = Asked.of(LAVENDER, 20, MAY_24);
        TimelineStep chill = lavender.step(Step.CHILL);
        TimelineStep sow = lavender.step(Step.SOW);

        assertThat(ChronoUnit.DAYS.between(chill.ideal(), sow.ideal())).isEqualTo(21);
        assertThat(ChronoUnit.WEEKS.between(chill.latest(), sow.latest())).isEqualTo(2);
        assertThat(chill.why()).startsWith("2 to 4 weeks of moist cold wake it before it is sown on ");
        assertThat(lavender.answered().steps().get(0).step()).isEqualTo(Step.CHILL);
    }

    @Test
    void what_is_asked_for_late_is_sown_later_so_that_the_cold_still_comes_before() {
        LocalDate usual = Asked.of(LAVENDER, 20, MAY_24).step(Step.SOW).ideal();

        Asked late = Asked.of(LAVENDER, 20, MAY_24).on(usual.minusWeeks(1));

        assertThat(late.step(Step.CHILL).ideal()).isEqualTo(usual.minusWeeks(1));
        assertThat(late.step(Step.SOW).earliest()).isEqualTo(usual.plusWeeks(1));
    }

    @Test
    void where_there_is_no_time_for_it_the_seed_is_sown_without_and_that_is_said() {
        TimelineStep usual = Asked.of(LAVENDER, 20, MAY_24).step(Step.SOW);
        LocalDate last = Asked.of(LAVENDER, 20, MAY_24)
                .on(usual.latest().plusDays(1))
                .step(Step.SOW)
                .latest();

        Timeline late = Asked.of(LAVENDER, 20, MAY_24).on(last.minusDays(5)).answered();

        assertThat(late.step(Step.CHILL)).isEmpty();
        assertThat(late.step(Step.SOW)).isPresent();
        assertThat(late.noteWords(Units.METRIC))
                .anySatisfy(note -> assertThat(note).contains("there is no time left for them"));
    }

    @Test
    void a_plan_that_comes_too_late_is_shown_as_it_would_have_been() {
        Timeline late =
                Asked.of(LAVENDER, 20, MAY_24).on(LocalDate.of(2027, 8, 20)).answered();

        assertThat(late.verdict()).isEqualTo(Verdict.TOO_LATE);
        assertThat(late.step(Step.CHILL).orElseThrow().ideal())
                .isEqualTo(Asked.of(LAVENDER, 20, MAY_24).step(Step.CHILL).ideal());
    }

    @Test
    void seed_in_the_cold_is_not_sown_before_its_weeks_are_over() {
        LocalDate chilled = LocalDate.of(2027, 3, 20);
        Seen seen = new Seen(chilled, null, null, null, null, null, null, null, null, null, null, null, null);

        Asked lavender = Asked.of(LAVENDER, 20, MAY_24).having(seen).on(chilled.plusDays(2));

        assertThat(lavender.step(Step.CHILL).done()).isEqualTo(chilled);
        assertThat(lavender.step(Step.SOW).earliest()).isAfterOrEqualTo(chilled.plusWeeks(2));
    }

    @Test
    void sown_seed_is_not_told_to_be_chilled() {
        Asked sown = Asked.of(LAVENDER, 20, MAY_24)
                .having(Seen.sownOn(LocalDate.of(2027, 3, 1)))
                .on(LocalDate.of(2027, 3, 2));

        assertThat(sown.answered().step(Step.CHILL)).isEmpty();
    }

    @Test
    void seed_that_lay_moist_for_weeks_is_not_soaked_as_well() {
        assertThat(Asked.of(LAVENDER, 20, MAY_24).inBag().answered().step(Step.SOAK))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"2, 4, 2, 4", ", 4, 4, 4", "3, , 3, 3"})
    void one_end_alone_stands_for_both(@Nullable Integer least, @Nullable Integer most, int from, int to) {
        assertThat(ColdSpell.of(new SeedTreatment.Span(least, most))).contains(new ColdSpell(from, to));
    }

    @Test
    void most_seed_wants_no_cold() {
        List<String> cold = CropCatalogue.bundled().fromSeed().stream()
                .filter(crop -> ColdSpell.of(crop).isPresent())
                .map(Crop::id)
                .toList();

        assertThat(cold).containsExactly("lavender");
        assertThat(ColdSpell.of(SeedTreatment.Span.UNKNOWN)).isEmpty();
    }
}
