package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.STAY;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.words.DayWords;

/** Tom's peppers, which he takes home after the heat: the way home is a step of its own, wherever steps are told. */
class HomeWithItPagesTest {
    private Cellar cellar;
    private String sowing;
    private LocalDate begins;
    private String by;

    @BeforeEach
    void sowWhatGoesHome() {
        cellar = Cellar.open();
        sowing = asked("home");
        var stay = cellar.group().database().sql().fetchSingle(STAY, STAY.SOWING_ID.eq(UUID.fromString(sowing)));
        begins = stay.getFromDay();
        by = DayWords.day(stay.getToDay().minusDays(1));
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void it_is_dated_on_the_sowings_page_from_the_placing_on() {
        assertThat(cellar.member().get("/sowings/" + sowing).text())
                .contains("Home with it", "its place on the mat is kept to " + by);
    }

    @Test
    void what_has_a_light_booked_goes_under_it_instead() {
        String lit = asked("light");

        assertThat(cellar.member().get("/sowings/" + lit).text())
                .contains("Off the heat")
                .doesNotContain("Home with it");
    }

    @Test
    void once_it_is_up_the_round_and_my_sowings_say_by_when_and_a_press_confirms_who_took_it() {
        Browser tom = up();
        Browser priya = cellar.group().signedIn(cellar.group().onDuty());
        assertThat(tom.get("/sowings").text()).contains("Home with it, " + by);
        assertThat(tom.get("/today").text())
                .contains("its grower takes it home by " + by, "Taken home", "Not home yet");
        assertThat(priya.get("/today?show=all").text()).contains("its grower takes it home by " + by);

        Answer taken = tom.post(
                "/sowings/" + sowing + "/entries", Map.of("step", "taken-home", "then", "/today", "sprouted", "8"));

        assertThat(taken.status()).as(taken.text()).isEqualTo(303);
        LocalDate today = begins.plusDays(9);
        var stay = cellar.group().database().sql().fetchSingle(STAY, STAY.SOWING_ID.eq(UUID.fromString(sowing)));
        assertThat(stay.getToDay()).isEqualTo(today);
        assertThat(cellar.group().database().sql().fetchCount(QUARTER_DAY, QUARTER_DAY.ON_DAY.ge(today)))
                .isZero();
        assertThat(cellar.group()
                        .database()
                        .sql()
                        .fetchSingle(ENTRY, ENTRY.STEP.eq("taken-home"))
                        .getMadeBy())
                .isEqualTo(cellar.group().member().id());
        assertThat(tom.get("/sowings/" + sowing).text()).contains("taken home", "under light");
        assertThat(tom.get("/today").text()).doesNotContain("its grower takes it home");
    }

    @Test
    void somebody_else_takes_it_off_the_heat_and_it_still_waits_for_its_way_home() {
        up();
        Browser priya = cellar.group().signedIn(cellar.group().onDuty());

        Answer off = priya.post("/sowings/" + sowing + "/entries", Map.of("step", "off-heat"));

        assertThat(off.status()).isEqualTo(303);
        assertThat(priya.get("/today?show=all").text())
                .contains("At home, or with no place yet", "its grower takes it home by")
                .doesNotContain("waits for its grower");
    }

    private Browser up() {
        evening(begins);
        assertThat(fresh().post("/sowings/" + sowing + "/entries", Map.of("step", "sown"))
                        .status())
                .isEqualTo(303);
        evening(begins.plusDays(9));
        Browser tom = fresh();
        assertThat(tom.post("/sowings/" + sowing + "/entries", Map.of("step", "look", "sprouted", "8"))
                        .status())
                .isEqualTo(303);
        return tom;
    }

    private Browser fresh() {
        return cellar.group().signedIn(cellar.group().member());
    }

    private void evening(LocalDate day) {
        LocalDate now = LocalDate.ofInstant(cellar.group().clock().instant(), ZoneId.of("America/Chicago"));
        cellar.group().clock().advance(Duration.ofDays(ChronoUnit.DAYS.between(now, day)));
    }

    private String asked(String after) {
        Map<String, String> fields = new HashMap<>(Cellar.peppers());
        fields.put("after", after);
        String id = cellar.ask(fields);
        assertThat(cellar.placeAsSuggested(id).status()).isEqualTo(303);
        return id;
    }
}
