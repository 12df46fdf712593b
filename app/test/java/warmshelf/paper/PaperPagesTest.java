package warmshelf.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.STAY;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.Server;
import warmshelf.Settings;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;

class PaperPagesTest {
    private Cellar cellar;

    @BeforeEach
    void open() {
        cellar = Cellar.open();
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/paper/round",
                "/paper/round/typing",
                "/paper/racks",
                "/paper/season",
                "/paper/hardening-off",
                "/paper/poster"
            })
    void each_sheet_is_one_press_from_the_page_that_lists_them_and_closed_to_strangers(String sheet) {
        assertThat(cellar.member().get("/paper").body()).contains("href=\"" + sheet + "\"");
        assertThat(cellar.member().get(sheet).status()).isEqualTo(200);
        assertThat(cellar.group().stranger().get(sheet).body()).doesNotContain("<table", "<svg");
    }

    @Test
    void today_my_sowings_and_racks_lead_to_their_sheets() {
        assertThat(cellar.member().get("/today?show=all").body()).contains("href=\"/paper/round\"");
        assertThat(cellar.member().get("/sowings").body()).contains("href=\"/paper/season\"");
        assertThat(cellar.member().get("/racks").body()).contains("href=\"/paper/racks?day=");
    }

    @Test
    void a_season_has_each_sowing_with_its_place_and_the_days_of_its_steps() {
        String sowing = cellar.ask(Cellar.peppers());
        assertThat(cellar.member().get("/paper/season").text()).contains("waits for a place");
        cellar.placeAsSuggested(sowing);

        assertThat(cellar.member().get("/paper/season").text())
                .containsPattern("Tom (?!Okafor)")
                .contains("Pepper, sweet and mild hot · Lantern Row")
                .contains("Hall cellar · North rack · shelf 1")
                .containsPattern("Plant out: \\w{3} \\d+ \\w{3} ?, by \\w{3} \\d+ \\w{3}");
    }

    @Test
    void only_coordinators_print_everybodys() {
        cellar.ask(Cellar.peppers());

        assertThat(cellar.coordinator().get("/paper/season?of=all").text()).contains("Tom", "Lantern Row");
        assertThat(cellar.group()
                        .signedIn(cellar.group().onDuty())
                        .get("/paper/season?of=all")
                        .text())
                .contains("Nothing under way yet")
                .doesNotContain("Lantern Row");
    }

    @Test
    void what_hardens_off_has_its_hours_by_day_and_what_does_not_is_left_out() {
        String sowing = cellar.ask(Cellar.peppers());
        assertThat(cellar.member().get("/paper/hardening-off").text()).contains("Nothing hardens off within 4 weeks");

        for (String step : new String[] {"sown", "under-light", "hardening-off"}) {
            cellar.tick(sowing, Map.of("id", UUID.randomUUID().toString(), "step", step, "lightPlace", "home"));
        }

        assertThat(cellar.member().get("/paper/hardening-off").text())
                .contains("Pepper, sweet and mild hot · Lantern Row")
                .contains("nights above")
                .contains("Mon 1: 2 h")
                .contains("all day and night")
                .contains("Bring them in for frost");
    }

    @Test
    void a_poster_from_an_address_of_this_machine_alone_says_so_and_has_no_square() {
        Answer poster = cellar.coordinator().get("/paper/poster");

        assertThat(poster.text())
                .contains("This poster has no square yet.")
                .contains("http://127.0.0.1:")
                .contains("--base-url");
        assertThat(poster.body()).doesNotContain("QR code of");
    }

    @Test
    void a_poster_from_an_address_that_phones_can_open_has_its_square() {
        String address = "http://192.168.1.20:7070";
        Settings settings = new Settings(
                "127.0.0.1", 0, address, Path.of("unused"), null, null, null, Set.of(), ZoneId.of("UTC"), null, null);
        try (Server node =
                Server.start(settings, cellar.group().database(), cellar.group().clock())) {
            Browser browser = Browser.at("http://127.0.0.1:" + node.port());
            browser.setCookie(
                    "warmshelf", Objects.requireNonNull(cellar.member().cookie("warmshelf")));

            Answer poster = browser.get("/paper/poster");

            assertThat(poster.body()).contains("aria-label=\"QR code of " + address + "\"");
            assertThat(poster.text()).contains("Then scan the square").doesNotContain("no square yet");
        }
    }

    @Test
    void a_rack_plan_says_what_lies_where_and_until_when() {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        LocalDate day =
                cellar.group().database().sql().fetchValue(STAY.FROM_DAY, STAY.SOWING_ID.eq(UUID.fromString(sowing)));

        assertThat(cellar.member().get("/paper/racks").text())
                .contains("Hall cellar · rack North rack")
                .contains("free");
        assertThat(cellar.member().get("/paper/racks?day=" + day).text())
                .contains("Pepper, sweet and mild hot, half tray Tom");
        assertThat(cellar.member().get("/paper/racks?day=never").status()).isEqualTo(400);
        assertThat(cellar.member().get("/paper/racks?site=" + UUID.randomUUID()).status())
                .isEqualTo(404);
    }
}
