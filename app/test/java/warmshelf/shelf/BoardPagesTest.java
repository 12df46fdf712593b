package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.testing.Decided.done;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class BoardPagesTest {
    private static final int LARGEST_PAGE_ON_THE_WIRE = 60_000;

    private TestGroup group;
    private Browser tom;
    private ShelfCast cast;
    private ShelvingStore shelving;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        tom = group.signedIn(group.member());
        shelving = new ShelvingStore(group.database().sql());
        cast = new ShelfCast(
                group.database(), group.audit(), group.coordinator().id());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @ParameterizedTest
    @CsvSource({"/racks", "/weeks"})
    void before_there_are_racks_the_board_says_so(String path) {
        Answer answer = tom.get(path);

        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.text()).contains("There are no racks yet");
    }

    @Test
    void the_racks_show_what_lies_there_today_with_a_link_to_it() {
        Mat mat = mats(1).get(0);
        UUID stay = cast.stay(mat.places().get(0).id(), 3, 2, TestGroup.TODAY.minusDays(3), 10);
        cast.setPoint(mat.id(), TestGroup.TODAY, 26);

        Answer answer = tom.get("/racks");

        assertThat(answer.text())
                .contains("Racks on Mon 1 Mar", "Mat M1 · hot 79 °F", "leaves Mon 8 Mar, ", "right half");
        assertThat(answer.body()).contains("/stays/" + stay);
    }

    @Test
    void a_tray_is_gone_on_the_day_its_stay_ends() {
        UUID stay = cast.stay(mats(1).get(0).places().get(0).id(), 1, 4, TestGroup.TODAY.minusDays(3), 10);

        assertThat(tom.get("/racks?day=2027-03-07").body()).contains("/stays/" + stay);
        assertThat(tom.get("/racks?day=2027-03-08").body()).doesNotContain("/stays/" + stay);
    }

    @Test
    void the_weeks_begin_on_a_monday_and_show_stays_by_place() {
        UUID stay = cast.stay(mats(1).get(0).places().get(0).id(), 1, 4, TestGroup.TODAY.plusDays(3), 10);

        Answer answer = tom.get("/weeks?from=2027-03-03&weeks=4");

        assertThat(answer.text()).contains("Weeks from 1 Mar 2027", "Thu 4 Mar", "Sat 13 Mar");
        assertThat(answer.body()).contains("/stays/" + stay);
    }

    @ParameterizedTest
    @CsvSource({"4, 22 Feb 2027", "8, 15 Feb 2027", "16, 8 Feb 2027", "26, 25 Jan 2027"})
    void unless_a_day_is_asked_for_about_a_fifth_of_the_weeks_is_past(int weeks, String from) {
        mats(1);

        assertThat(tom.get("/weeks?weeks=" + weeks).text()).contains("Weeks from " + from);
    }

    @ParameterizedTest
    @CsvSource({"/racks", "/weeks"})
    void coordinators_get_handles_to_move_trays_and_members_none(String path) {
        UUID stay = cast.stay(mats(1).get(0).places().get(0).id(), 3, 2, TestGroup.TODAY, 10);
        Browser coordinator = group.signedIn(group.coordinator());

        assertThat(coordinator.get(path).body())
                .contains("href=\"/stays/" + stay + "\" data-slot=\"3/2\"", "data-place=", "/js/board.js");
        assertThat(tom.get(path).body())
                .contains("href=\"/stays/" + stay)
                .doesNotContain("data-slot", "data-place", "board.js", "board-ask");
    }

    @Test
    void one_site_can_be_shown_alone() {
        cast.stay(mats(1).get(0).places().get(0).id(), 1, 4, TestGroup.TODAY, 10);
        new SiteStore(group.database().sql(), group.audit())
                .add(new SiteDraft("Garage", 2, new Circuit(10, 230), ""), cast.ilse());
        UUID garage = shelving.all().get(1).id();

        assertThat(tom.get("/racks?site=" + garage).body()).doesNotContain("/stays/");
        assertThat(tom.get("/racks?site=" + shelving.all().get(0).id()).body()).contains("/stays/");
        assertThat(tom.get("/racks?site=" + cast.ilse()).status()).isEqualTo(404);
    }

    @ParameterizedTest
    @CsvSource({
        "/racks?day=yesterday, Day was 'yesterday'",
        "/weeks?from=2027-02-30, First week was '2027-02-30'",
        "/weeks?weeks=0, Weeks was '0'",
        "/weeks?weeks=53, Weeks was '53'",
    })
    void a_day_or_number_that_cannot_be_is_refused_with_the_reason(String path, String sentence) {
        Answer answer = tom.get(path);

        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.text()).contains(sentence);
    }

    @ParameterizedTest
    @CsvSource({"/racks", "/weeks"})
    void strangers_see_nothing_of_the_boards(String path) {
        assertThat(group.stranger().get(path).status()).isIn(303, 401);
    }

    @Test
    void twelve_full_mats_make_a_light_page() throws IOException {
        for (Mat mat : mats(12)) {
            for (Place place : mat.places()) {
                cast.stay(place.id(), 1, 2, TestGroup.TODAY, 10);
                cast.stay(place.id(), 3, 1, TestGroup.TODAY, 10);
                cast.stay(place.id(), 4, 1, TestGroup.TODAY, 10);
            }
            cast.setPoint(mat.id(), TestGroup.TODAY, 25);
        }

        assertThat(onTheWire(tom.get("/racks"))).isLessThan(LARGEST_PAGE_ON_THE_WIRE);
        assertThat(onTheWire(tom.get("/weeks"))).isLessThan(LARGEST_PAGE_ON_THE_WIRE);
    }

    private static int onTheWire(Answer answer) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
            gzip.write(answer.body().getBytes(StandardCharsets.UTF_8));
        }
        return packed.size();
    }

    /** A rack with one shelf and so many mats of four places on it. */
    private List<Mat> mats(int number) {
        MatStore store = new MatStore(group.database().sql(), group.audit());
        UUID shelf = done(new ShelfStore(group.database().sql(), group.audit())
                .add(cast.rack(), new ShelfDraft(1, 0, 0), cast.ilse()));
        for (int each = 1; each <= number; each++) {
            MatDraft mat = new MatDraft("M" + each, each, 4, 18, 32, 107, 25);
            store.add(shelf, mat, cast.ilse());
        }
        return shelving.all().get(0).racks().get(0).shelves().get(0).mats();
    }
}
