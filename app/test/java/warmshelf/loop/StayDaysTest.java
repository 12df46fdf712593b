package warmshelf.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

/** Every page that tells of a stay tells the same days of it: the last one included, or the day it leaves. */
class StayDaysTest {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

    private TestGroup group;
    private Cellar cellar;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        cellar = Cellar.in(group);
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void every_page_tells_the_same_last_day_of_a_stay() {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        var stay = group.database().sql().selectFrom(STAY).fetchSingle();
        UUID mat = group.database()
                .sql()
                .select(MAT.ID)
                .from(MAT)
                .where(MAT.NAME.eq("M1"))
                .fetchSingle(MAT.ID);
        String first = DAY.format(stay.getFromDay());
        String last = DAY.format(stay.getToDay().minusDays(1));
        String leaving = DAY.format(stay.getToDay());
        String both = first + " to " + last;
        Map<String, String> told = new LinkedHashMap<>();
        told.put("/sowings/" + sowing, both);
        told.put("/sowings/" + sowing + "/withdrawal", both);
        told.put("/stays/" + stay.getId(), both);
        told.put("/requests/" + sowing, both);
        told.put("/mats/" + mat, first + " " + last);
        told.put("/weeks?from=" + stay.getFromDay(), both);
        told.put("/racks?day=" + stay.getFromDay(), "leaves " + leaving);

        told.forEach((page, words) -> {
            String text = words(cellar.coordinator(), cellar.member(), page);
            assertThat(text).as(page).contains(words);
            assertThat(text.replace("leaves " + leaving, ""))
                    .as("the day after the last one is told as the day it leaves only, on " + page)
                    .doesNotContain("to " + leaving, "until " + leaving);
        });
        assertThat(cellar.coordinator().get("/racks?day=" + stay.getFromDay()).text())
                .as("the list beside the drawing")
                .contains(last);
    }

    /** What a page says and shows, hints and drawn words included. */
    private static String words(Browser coordinator, Browser member, String page) {
        Browser reader = page.startsWith("/sowings") ? member : coordinator;
        String body = reader.get(page).body();
        return body.replaceAll("<[^>]+aria-label=\"([^\"]*)\"[^>]*>", " $1 ")
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\\s+", " ");
    }

    @Test
    void days_are_counted_since_sowing_wherever_a_day_is_told() {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        LocalDate from = group.database().sql().selectFrom(STAY).fetchSingle().getFromDay();
        group.clock().set(from.plusDays(2).atTime(18, 0).toInstant(java.time.ZoneOffset.UTC));
        cellar.tick(sowing, Map.of("step", "sown"));
        group.clock().set(from.plusDays(6).atTime(18, 0).toInstant(java.time.ZoneOffset.UTC));

        assertThat(cellar.member().get("/sowings/" + sowing).text()).contains("day 4");
        assertThat(cellar.coordinator().get("/racks").text())
                .as("a rack tells when it leaves, no day of its own")
                .doesNotContainPattern("\\bday [0-9]");
    }
}
