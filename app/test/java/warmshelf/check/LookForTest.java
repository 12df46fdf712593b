package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import warmshelf.shelf.Lamp;
import warmshelf.words.Units;

class LookForTest {
    private static final LocalDate SOWN = LocalDate.of(2027, 3, 22);

    @ParameterizedTest
    @EnumSource(CheckKind.class)
    void every_check_says_what_to_look_for_and_what_to_do_then(CheckKind kind) {
        for (Cases begun : new Cases[] {Cases.bag(), Cases.cells()}) {
            Subject subject = begun.onMat(SOWN, SOWN.plusDays(40)).sown().on(SOWN);

            assertThat(LookFor.look(kind, subject, Units.METRIC)).isNotBlank().doesNotContain("{");
            assertThat(LookFor.ifSeen(kind, subject, Units.METRIC))
                    .isNotBlank()
                    .endsWith(".")
                    .doesNotContain("{");
        }
    }

    /** Iowa State University Extension: fluorescent fixtures 4 to 6 inches (the group's 4, 10 cm), LED 8 to 12 inches (20 to 30 cm). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
        fluorescent | 16 | true  | about 10 cm above the leaves?
        led         | 14 | true  | 20–30 cm above the leaves, or as their maker says?
        other       | -  | -     | as far above the leaves as their maker says?
        -           | -  | -     | about 10 cm above the leaves where they are tubes, 20–30 cm where they are LEDs?
        fluorescent | 15 | false | No timer switches them: on in the morning, off at night, 15 hours a day.
        """)
    void how_near_the_lamps_hang_goes_by_their_kind(
            @Nullable String kind, @Nullable Integer hours, @Nullable Boolean timer, String said) {
        Subject any = Cases.cells().onMat(SOWN, SOWN.plusDays(40)).sown().on(SOWN);
        Lamp lamp = new Lamp(Lamp.Kind.named(kind), hours, timer);
        Subject under = new Subject(
                any.sowing(), any.progress(), any.stay(), lamp, any.timeline(), any.nearlyAllBy(), any.moreToCome());

        assertThat(LookFor.look(CheckKind.LIGHT_LOOK, under, Units.METRIC)).contains(said);
    }

    /** Nebraska Regional Poison Center: hot peppers burn; McCracken County Master Gardener: leaves of the nightshades are poisonous. */
    @Test
    void what_of_a_crop_can_hurt_stands_open_at_the_check_where_it_is_handled() {
        Subject peppers = Cases.cells().onMat(SOWN, SOWN.plusDays(40)).sown().on(SOWN);

        assertThat(LookFor.careful(CheckKind.SOW, peppers)).contains("Hot kinds burn skin and eyes");
        assertThat(LookFor.careful(CheckKind.POT_ON, peppers)).contains("Parts of it are poisonous");
        assertThat(LookFor.careful(CheckKind.LIGHT_LOOK, peppers)).doesNotContain("poisonous", "burn");
    }
}
