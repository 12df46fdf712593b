package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Modifier;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import warmshelf.allocation.Band;
import warmshelf.plan.engine.NoPlaceReason;
import warmshelf.plan.engine.PlaceChange;
import warmshelf.plan.engine.Refused;
import warmshelf.plan.engine.SeasonPlan;
import warmshelf.words.Units;

class RefusedJsonTest {
    private static final LocalDate MARCH = LocalDate.of(2027, 3, 1);
    private static final Band WARM = new Band(24, 30);

    static List<NoPlaceReason> reasons() {
        return List.of(
                new NoPlaceReason.NoMatWarmEnough(WARM),
                new NoPlaceReason.DarkMatsOnly(WARM),
                new NoPlaceReason.NoLightAfterwards(),
                new NoPlaceReason.CircuitFull(),
                new NoPlaceReason.MatsTaken(MARCH, MARCH.plusDays(9)),
                new NoPlaceReason.WindowOver(MARCH),
                new NoPlaceReason.TooFewLitPlaces(),
                new NoPlaceReason.OutlastsPlan(MARCH),
                new NoPlaceReason.MatsOutOfService(),
                new NoPlaceReason.NotFoundYet(),
                new NoPlaceReason.CameLater(),
                new NoPlaceReason.TakenOut("Priya"),
                new NoPlaceReason.AsWritten("Every mat is full."));
    }

    static List<PlaceChange> changes() {
        return List.of(
                new PlaceChange.StartLater(MARCH, 6),
                new PlaceChange.StartEarlier(MARCH, 1),
                new PlaceChange.Smaller(2, 4, MARCH),
                new PlaceChange.OtherWarmth(22, WARM, MARCH, 3),
                new PlaceChange.OtherWarmth(22, WARM, MARCH, 0),
                new PlaceChange.LightOtherwise(),
                new PlaceChange.JoinWaitingList(),
                new PlaceChange.PlanAnew(),
                new PlaceChange.NothingProposed(),
                new PlaceChange.Proposed("Start 4 days later."));
    }

    static Stream<Refused> refusals() {
        return Stream.concat(
                reasons().stream().map(reason -> new Refused("r", reason, new PlaceChange.PlanAnew())),
                changes().stream().map(change -> new Refused("r", new NoPlaceReason.CircuitFull(), change)));
    }

    @Test
    void every_reason_and_every_change_that_there_is_is_tried_here() {
        assertThat(reasons().stream().map(Object::getClass).distinct().toList()).isEqualTo(kinds(NoPlaceReason.class));
        assertThat(changes().stream().map(Object::getClass).distinct().toList()).isEqualTo(kinds(PlaceChange.class));
    }

    private static List<Class<?>> kinds(Class<?> sealed) {
        List<Class<?>> kinds = Arrays.asList(sealed.getPermittedSubclasses());
        assertThat(kinds).allMatch(kind -> Modifier.isFinal(kind.getModifiers()));
        return kinds;
    }

    @ParameterizedTest
    @MethodSource("refusals")
    void each_is_read_as_it_was_kept(Refused refused) {
        assertThat(RefusedJson.read(RefusedJson.write(refused))).isEqualTo(refused);
        SeasonPlan plan = new SeasonPlan(List.of(), List.of(), List.of(refused));
        assertThat(PlanJson.read(PlanJson.write(plan))).isEqualTo(plan);
    }

    @ParameterizedTest
    @MethodSource("refusals")
    void nobody_is_told_of_a_unit_that_is_not_theirs(Refused refused) {
        assertThat(refused.words(Units.AMERICAN))
                .isNotBlank()
                .doesNotContain("°C")
                .doesNotContain("{");
        assertThat(refused.words(Units.METRIC)).doesNotContain("°F");
    }

    @Test
    void figures_are_kept_and_words_are_not() {
        assertThat(RefusedJson.write(new Refused(
                        "r", new NoPlaceReason.NoMatWarmEnough(WARM), new PlaceChange.OtherWarmth(22, WARM, MARCH, 3))))
                .isEqualTo("{\"request\":\"r\","
                        + "\"reason\":{\"code\":\"no-mat-warm-enough\",\"band\":{\"lowC\":24,\"highC\":30}},"
                        + "\"change\":{\"code\":\"other-warmth\",\"celsius\":22,\"insteadOf\":{\"lowC\":24,\"highC\":30},"
                        + "\"start\":\"2027-03-01\",\"slowerDays\":3}}");
    }

    @Test
    void each_reads_the_degrees_in_their_own_unit() {
        Refused refused = new Refused(
                "r", new NoPlaceReason.NoMatWarmEnough(WARM), new PlaceChange.OtherWarmth(22, WARM, MARCH, 3));

        assertThat(refused.words(Units.METRIC))
                .isEqualTo("No mat can be set to 24–30 °C, which it needs. On a mat at 22 °C instead of 24–30 °C it"
                        + " would have a place from 1 March, 3 days slower.");
        // 22 °C is 71.6 °F, 24 °C is 75.2 °F, 30 °C is 86 °F: by definition of the scales.
        assertThat(refused.words(Units.AMERICAN))
                .isEqualTo("No mat can be set to 75–86 °F, which it needs. On a mat at 72 °F instead of 75–86 °F it"
                        + " would have a place from 1 March, 3 days slower.");
    }

    @Test
    void a_plan_that_an_older_program_kept_in_sentences_is_read_as_it_was_written() {
        SeasonPlan plan = PlanJson.read("{\"placed\":[],\"setPoints\":[],\"refused\":[{\"request\":\"r\","
                + "\"reason\":\"No mat can be set to 10–15 °C (50–59 °F), which it needs.\",\"change\":\"\"}]}");

        assertThat(plan.refused())
                .containsExactly(new Refused(
                        "r",
                        new NoPlaceReason.AsWritten("No mat can be set to 10–15 °C (50–59 °F), which it needs."),
                        new PlaceChange.Proposed("")));
        assertThat(plan.refused().get(0).words(Units.METRIC))
                .isEqualTo("No mat can be set to 10–15 °C (50–59 °F), which it needs.");
    }
}
