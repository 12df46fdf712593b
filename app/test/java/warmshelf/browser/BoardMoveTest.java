package warmshelf.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.STAY;

import com.microsoft.playwright.Clock;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import warmshelf.db.generated.tables.records.StayRecord;

/** Moving trays by mouse, finger and keys, as a coordinator does. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BoardMoveTest {
    private static final int DAY_WIDTH = 19;
    /** Longer than a finger must stay to pick a tray up. */
    private static final int LONG_PRESS_MS = 500;
    /** A page's own clock begins at nought and stands still from here on. */
    private static final int AN_HOUR_MS = 3_600_000;

    private Chromium chromium;
    private SpringGroup spring;
    private String stay;
    private StayRecord before;
    private Page page;

    @BeforeAll
    void start() {
        chromium = Chromium.open();
        spring = SpringGroup.open();
        stay = spring.stayToCome();
        before = stored();
    }

    @AfterAll
    void stop() {
        if (spring != null) {
            spring.close();
        }
        if (chromium != null) {
            chromium.close();
        }
    }

    @BeforeEach
    void signIn() {
        page = chromium.on(Screen.DESKTOP, spring.group(), spring.group().coordinator())
                .newPage();
    }

    @AfterEach
    void putBack() {
        StayRecord now = stored();
        if (!now.getPlaceId().equals(before.getPlaceId()) || !now.getFromDay().equals(before.getFromDay())) {
            page.navigate(Chromium.address(spring.group()) + "/stays/" + stay);
            page.locator("text=Undo my last move").click();
            assertThat(page.locator(".notice").first()).containsText("back where it was");
        }
        page.context().close();
    }

    @Test
    void a_tray_is_dragged_to_a_free_place_of_the_racks_and_saved_after_asking() {
        open("/racks?day=" + before.getFromDay());
        String other = freePlace();

        drag(tray(), place(other), 0.25);
        assertThat(words()).containsText("Fits.");
        page.mouse().up();

        assertThat(page.locator("#board-ask")).isVisible();
        assertThat(page.locator("#board-ask [data-say=then]")).containsText("place 2");
        assertThat(where(stored())).as("nothing is saved yet").isEqualTo(where(before));
        page.locator("#board-ask button[type=submit]").click();

        assertThat(page.locator(".notice").first()).containsText("lies on mat");
        assertThat(stored().getPlaceId()).isEqualTo(UUID.fromString(other));
        assertThat(page.url()).endsWith("/racks?day=" + before.getFromDay());
        page.locator("text=Undo").click();
        assertThat(page.locator(".notice").first()).containsText("back where it was");
        assertThat(stored().getPlaceId()).isEqualTo(before.getPlaceId());
    }

    @Test
    void what_clashes_is_shown_while_moving_and_there_is_nothing_to_save() {
        open("/racks?day=" + before.getFromDay());

        page.evaluate("() => window.scrollTo(0, 350)");
        // the first place under the light, where nothing is kept warm
        drag(tray(), page.locator("[data-place]").nth(4), 0.25);

        assertThat(words()).containsText("Clashes.");
        assertThat(page.locator(".ghost--clash")).hasCount(1);
        page.mouse().up();
        assertThat(page.locator("#board-ask h2")).hasText("It clashes here");
        assertThat(page.locator("#board-ask button[type=submit]")).isHidden();
        page.keyboard().press("Escape");
        assertThat(page.locator("#board-ask")).isHidden();
        assertThat(where(stored())).isEqualTo(where(before));
    }

    @Test
    void in_the_weeks_a_tray_is_dragged_along_the_days() {
        open("/weeks");
        tray().scrollIntoViewIfNeeded();
        BoundingBox box = tray().locator("path").boundingBox();

        page.mouse().move(box.x + 8, box.y + box.height / 2);
        page.mouse().down();
        page.mouse().move(box.x + 8 + DAY_WIDTH, box.y + box.height / 2);
        page.mouse().move(box.x + 8 + 2 * DAY_WIDTH, box.y + box.height / 2);
        assertThat(words()).containsText("Fits.");
        page.mouse().up();
        assertThat(page.locator("#board-ask input[name=from]"))
                .hasValue(before.getFromDay().plusDays(2).toString());
        page.locator("#board-ask button[type=submit]").click();

        assertThat(page.locator(".notice").first()).containsText("lies on mat");
        assertThat(stored().getFromDay()).isEqualTo(before.getFromDay().plusDays(2));
    }

    @Test
    void a_tray_is_moved_by_keys_alone_with_words_for_those_who_do_not_see_it() {
        open("/weeks");
        tray().focus();

        page.keyboard().press("Enter");
        assertThat(words()).isVisible();
        page.keyboard().press("ArrowRight");
        page.keyboard().press("ArrowRight");
        page.keyboard().press("ArrowLeft");
        assertThat(words()).containsText("Fits.");
        page.keyboard().press("Enter");
        assertThat(page.locator("#board-ask")).isVisible();
        page.locator("#board-ask button[type=submit]").press("Enter");

        assertThat(page.locator(".notice").first()).containsText("lies on mat");
        assertThat(stored().getFromDay()).isEqualTo(before.getFromDay().plusDays(1));
    }

    @Test
    void escape_leaves_it_where_it_was() {
        open("/racks?day=" + before.getFromDay());
        tray().focus();
        page.keyboard().press(" ");
        page.keyboard().press("ArrowRight");
        page.keyboard().press("Escape");

        assertThat(words()).hasText("Left where it was.");
        assertThat(page.locator(".ghost")).hasCount(0);
        assertThat(where(stored())).isEqualTo(where(before));
        assertThat(page.evaluate("() => document.activeElement.getAttribute('href')"))
                .isEqualTo("/stays/" + stay);
    }

    @Test
    void whoever_comes_second_sees_what_changed() {
        open("/racks?day=" + before.getFromDay());
        drag(tray(), place(freePlace()), 0.75);
        assertThat(words()).containsText("Fits.");
        page.mouse().up();
        spring.group()
                .database()
                .sql()
                .update(STAY)
                .set(STAY.VERSION, STAY.VERSION.plus(1))
                .where(STAY.ID.eq(UUID.fromString(stay)))
                .execute();

        page.locator("#board-ask button[type=submit]").click();

        assertThat(page.locator("#problems")).containsText("Not saved");
        assertThat(page.locator("main")).containsText("What you wanted is kept below.");
        assertThat(stored().getPlaceId()).isEqualTo(before.getPlaceId());
        before = stored();
    }

    @Test
    void a_press_without_dragging_opens_the_trays_page_where_buttons_do_the_same() {
        open("/racks?day=" + before.getFromDay());

        tray().click();

        page.waitForURL("**/stays/" + stay);
        assertThat(page.locator("text=A day later")).isVisible();
    }

    @Test
    void what_waits_beside_the_racks_is_dragged_onto_a_place_laid_there_after_asking_and_taken_back() {
        String form = ".unplaced form[action='/requests/" + spring.waiting + "/placement']";
        open("/racks");
        open("/racks?day=" + page.locator(form + " [name=from]").inputValue());
        boolean right = page.locator(form + " [name=quarter]").inputValue().equals("3");
        Locator free = place(page.locator(form + " [name=place]").inputValue());
        Locator waits = page.locator(".unplaced a[href='/requests/" + spring.waiting + "']");
        waits.scrollIntoViewIfNeeded();
        BoundingBox from = waits.boundingBox();
        page.mouse().move(from.x + 9, from.y + 9);
        page.mouse().down();
        page.mouse().move(from.x + 30, from.y + 9);
        assertThat(page.locator(".ghost")).hasCount(0);
        free.scrollIntoViewIfNeeded();
        aim(free, right ? 0.75 : 0.25);
        assertThat(words()).containsText("Fits.");
        page.mouse().up();

        assertThat(page.locator("#board-ask h2")).hasText("Lay it here?");
        page.locator("#board-ask button[type=submit]").click();

        assertThat(page.locator(".notice").first()).containsText("lies on mat");
        assertThat(waits).hasCount(0);
        page.locator("text=Undo").click();
        assertThat(waits).hasCount(1);
    }

    @Test
    void on_a_phone_a_long_press_picks_up_and_a_short_one_scrolls() {
        Page phone = chromium.on(Screen.PHONE, spring.group(), spring.group().coordinator())
                .newPage();
        phone.clock().install(new Clock.InstallOptions().setTime(0));
        phone.navigate(Chromium.address(spring.group()) + "/racks?day=" + before.getFromDay() + "#shelf-" + shelf());
        phone.clock().pauseAt(AN_HOUR_MS);
        Locator tray = phone.locator("[data-slot][href='/stays/" + stay + "']");
        tray.scrollIntoViewIfNeeded();

        touch(tray, "pointerdown", 0);
        touch(tray, "pointermove", 40);
        touch(tray, "pointerup", 40);
        phone.clock().runFor(LONG_PRESS_MS);
        assertThat(phone.locator(".ghost")).hasCount(0);

        touch(tray, "pointerdown", 0);
        assertThat(phone.locator(".ghost")).hasCount(0);
        phone.clock().runFor(LONG_PRESS_MS);
        assertThat(phone.locator(".ghost")).hasCount(1);
        touch(tray, "pointercancel", 0);
        assertThat(phone.locator(".ghost")).hasCount(0);
        phone.context().close();
    }

    @Test
    void without_scripts_the_same_is_done_by_links_and_buttons() {
        Page plain = chromium.on(Screen.PHONE, false).newPage();
        plain.context().addCookies(page.context().cookies());
        plain.navigate(Chromium.address(spring.group()) + "/stays/" + stay);

        plain.locator("text=A day later").click();
        assertThat(plain.locator("main")).containsText("Fits.");
        plain.locator("text=Save the move").click();

        assertThat(plain.locator(".notice").first()).containsText("lies on mat");
        assertThat(stored().getFromDay()).isEqualTo(before.getFromDay().plusDays(1));
        plain.context().close();
    }

    private static void touch(Locator tray, String type, int moved) {
        tray.evaluate("""
            (tray, [type, moved]) => { const box = tray.getBoundingClientRect();
              tray.dispatchEvent(new PointerEvent(type, { bubbles: true, cancelable: true, pointerType: 'touch', button: 0,
                clientX: box.left + 9 + moved, clientY: box.top + 9 })); }
            """, List.of(type, moved));
    }

    private void drag(Locator tray, Locator place, double across) {
        tray.scrollIntoViewIfNeeded();
        BoundingBox from = tray.locator("path").boundingBox();
        page.mouse().move(from.x + from.width / 2, from.y + from.height / 2);
        page.mouse().down();
        page.mouse().move(from.x + from.width / 2 + 9, from.y + from.height / 2);
        aim(place, across);
    }

    private void aim(Locator place, double across) {
        double[] to = ((List<?>) place.evaluate("""
            (place, across) => { const [x, y, w, h] = place.dataset.box.split(' ').map(Number);
              const box = place.ownerSVGElement.getBoundingClientRect(); return [box.left + x + w * across, box.top + y + h / 2]; }
            """, across))
                .stream().mapToDouble(number -> ((Number) number).doubleValue()).toArray();
        page.mouse().move(to[0], to[1]);
    }

    /** The shelf on which it lies; a phone shows one at a time. */
    private UUID shelf() {
        return spring.group()
                .database()
                .sql()
                .fetchOne(
                        "select m.shelf_id from mat m join place p on p.mat_id = m.id where p.id = ?",
                        before.getPlaceId())
                .get(0, UUID.class);
    }

    /** The other place of the same mat. */
    private String freePlace() {
        return spring.group()
                .database()
                .sql()
                .fetchOne(
                        "select o.id from place o join place p on p.mat_id = o.mat_id and p.id <> o.id where p.id = ?",
                        before.getPlaceId())
                .get(0, UUID.class)
                .toString();
    }

    private Locator place(String id) {
        return page.locator("[data-place='" + id + "']");
    }

    private Locator tray() {
        return page.locator("[data-slot][href='/stays/" + stay + "']");
    }

    private Locator words() {
        return page.locator("#board-words");
    }

    private void open(String path) {
        page.navigate(Chromium.address(spring.group()) + path);
    }

    private static List<Object> where(StayRecord stay) {
        return List.of(stay.getPlaceId(), stay.getFirstQuarter(), stay.getFromDay(), stay.getToDay());
    }

    private StayRecord stored() {
        return spring.group().database().sql().fetchSingle(STAY, STAY.ID.eq(UUID.fromString(stay)));
    }
}
