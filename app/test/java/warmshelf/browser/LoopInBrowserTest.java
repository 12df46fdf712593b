package warmshelf.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static warmshelf.db.generated.Tables.ENTRY;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.Duration;
import java.time.LocalDate;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.testing.TestGroup;

/** The whole season of one half tray, as two people press it on their phones: from opening the group to the lit shelf. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LoopInBrowserTest {
    private Chromium chromium;

    @BeforeAll
    void start() {
        chromium = Chromium.open();
    }

    @AfterAll
    void stop() {
        if (chromium != null) {
            chromium.close();
        }
    }

    @ParameterizedTest(name = "scripts: {0}")
    @ValueSource(booleans = {true, false})
    void a_group_opens_asks_places_looks_and_moves_on(boolean scripts) {
        try (TestGroup group = TestGroup.unopened()) {
            Page coordinator = chromium.on(Screen.PHONE, scripts).newPage();
            Page member = chromium.on(Screen.PHONE, scripts).newPage();
            String address = Chromium.address(group);

            openGroup(coordinator, address + group.openingPath().orElseThrow());
            setUpCellar(coordinator, address);
            join(member, invite(coordinator, address));
            askForSpace(member, address);
            LocalDate start = place(coordinator, address);

            passUntil(group, start);
            member.navigate(address + "/today");
            assertThat(main(member)).containsText("Write the label first");
            tick(group, member, "Done: sown");

            passUntil(group, start.plusDays(9));
            member.navigate(address + "/today");
            assertThat(main(member)).containsText("day 9");
            tick(group, member, "Nothing yet");
            assertThat(main(member)).containsText("Looked at today by Ana");

            passUntil(group, start.plusDays(10));
            member.navigate(address + "/today");
            member.getByLabel("Up so far", new Page.GetByLabelOptions().setExact(true))
                    .fill("9");
            tick(group, member, scripts ? "Keep 9 up" : "Keep the count");
            tick(group, member, "Off the heat, under light");

            assertUnderLight(member, address);
        }
    }

    private static void openGroup(Page page, String link) {
        page.navigate(link);
        page.getByLabel("Group’s name").fill("Lakeside Seed Starters");
        page.locator("select[name=groupCountry]").selectOption("US");
        page.getByLabel("Group’s postcode").fill("55806");
        page.getByLabel("Time zone").fill("America/Chicago");
        page.getByLabel("Degrees Celsius").check();
        page.getByLabel("Centimetres").check();
        page.getByLabel("Season").fill("2027");
        page.getByLabel("Your name").fill("Mo Lindqvist");
        page.getByLabel("Your postcode").fill("55803");
        page.getByLabel("Passphrase").fill("four lit shelves");
        press(page, "Open the group");
        assertThat(page.locator(".head")).containsText("Lakeside Seed Starters");
    }

    private static void setUpCellar(Page page, String address) {
        page.navigate(address + "/sites");
        follow(page, "Add the first site");
        fill(page, "Name of the site", "Hall cellar");
        fill(page, "Walking order", "1");
        fill(page, "Circuit, amps", "15");
        fill(page, "Circuit, volts", "120");
        press(page, "Save");
        follow(page, "Add a rack");
        fill(page, "Name of the rack", "North");
        page.getByLabel("Shelf 1, the top one").selectOption("mats-1");
        page.getByLabel("Shelf 2").selectOption("light");
        fill(page, "Places on each", "2");
        fill(page, "Watts of each", "45");
        fill(page, "Lowest set-point", "20");
        fill(page, "Highest set-point", "32");
        fill(page, "Usual set-point", "26");
        fill(page, "Places under them", "4");
        fill(page, "Watts of the lights", "80");
        press(page, "Save");
        assertThat(main(page)).containsText("Mat M1: 2 places");
    }

    private static String invite(Page page, String address) {
        page.navigate(address + "/people");
        fill(page, "For whom", "Ana");
        page.getByLabel("Member", new Page.GetByLabelOptions().setExact(true)).check();
        press(page, "Make a link");
        // The address that people type is this machine's name; the browser here goes by its number.
        String link = page.getByLabel("Link", new Page.GetByLabelOptions().setExact(true))
                .inputValue();
        return address + link.substring(link.indexOf("/join/"));
    }

    private static void join(Page page, String link) {
        page.navigate(link);
        assertThat(main(page)).containsText("Mo invites you");
        fill(page, "Your name", "Ana Reyes");
        page.locator("select[name=country]").selectOption("US");
        fill(page, "Your postcode", "55804");
        fill(page, "Passphrase", "a row of lanterns");
        press(page, "Join");
        page.waitForURL("**/today");
    }

    private static void askForSpace(Page page, String address) {
        page.navigate(address + "/ask");
        fill(page, "Crop or variety", "pepper, sweet");
        press(page, "Search");
        page.locator("#found a[href*='crop=pepper']").first().click();
        fill(page, "Variety", "Lantern Row");
        fill(page, "Plants wanted", "10");
        page.getByText("Bought for this year").click();
        fill(page, "Seeds in it", "40");
        press(page, "Show the plan");
        assertThat(main(page)).containsText("Seeds to sow");
        assertThat(main(page)).containsText("weeks before planting out");
        assertThat(main(page)).containsText("M1, place 1");
        press(page, "Send the request");
        page.waitForURL("**/sowings/*");
        assertThat(main(page)).containsText("waiting");
    }

    /** Takes the suggestion and answers with the day on which the place is its. */
    private static LocalDate place(Page page, String address) {
        page.navigate(address + "/requests");
        assertThat(main(page)).containsText("Ana");
        LocalDate from =
                LocalDate.parse(page.locator("input[name=from]").first().inputValue());
        press(page, "Put it on M1, place 1");
        assertThat(main(page)).containsText("Nothing waits for a decision");
        return from;
    }

    private static void assertUnderLight(Page page, String address) {
        page.navigate(address + "/sowings");
        assertThat(main(page)).containsText("under light");
        page.navigate(address + "/racks");
        assertThat(page.locator(".rack a[href^='/stays/']")).hasCount(1);
        assertThat(page.locator(".rack a[href^='/stays/']")).containsText("Ana, under light");
        page.navigate(address + "/weeks");
        assertThat(page.locator(".weeks__days a").last()).containsText("Ana");
        assertThat(page.locator(".weeks__days a").last()).containsText("lit place 1");
    }

    private static Locator main(Page page) {
        return page.locator("main");
    }

    private static void fill(Page page, String label, String text) {
        page.getByLabel(label).and(page.locator("input, textarea")).first().fill(text);
    }

    private static void press(Page page, String button) {
        page.locator("main")
                .getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName(startingWith(button)))
                .first()
                .click();
    }

    /** A script keeps a tick first, and the page or its worker sends it then: what comes next waits until it is kept. */
    private static void tick(TestGroup group, Page page, String button) {
        int before = entries(group);
        press(page, button);
        page.waitForCondition(() -> entries(group) > before);
    }

    private static int entries(TestGroup group) {
        return group.database().sql().fetchCount(ENTRY);
    }

    private static void follow(Page page, String link) {
        page.getByRole(AriaRole.LINK, named(link)).first().click();
    }

    private static Page.GetByRoleOptions named(String words) {
        return new Page.GetByRoleOptions().setName(startingWith(words));
    }

    /** Plain words only: the pattern is handed to the browser, which reads no quoting. */
    private static Pattern startingWith(String words) {
        return Pattern.compile("^\\s*" + words);
    }

    private static void passUntil(TestGroup group, LocalDate day) {
        group.clock().set(TestGroup.MORNING.plus(Duration.ofDays(day.toEpochDay() - TestGroup.TODAY.toEpochDay())));
    }
}
