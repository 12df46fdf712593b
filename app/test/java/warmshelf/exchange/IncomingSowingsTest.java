package warmshelf.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;
import warmshelf.testing.Upload;

class IncomingSowingsTest {
    private static final String OLD_LIST = """
            season;grower;crop;variety;seed_year;method;warm;sown_on;seeds;came_up;counted_on;lost;planted_out_on;given_up;colour
            2026;Tom Okafor;pepper;Lantern Row;2025;cells;yes;3/14/2026;20;18;4/2/2026;2;5/30/2026;;red
            2026;Priya Raman;tomato;Harbour Light;;bag;;4/1/2026;12;;;;;yes;
            2025;Tom Okafor;Pepper, sweet and mild hot;Lantern Row;;;no;3/20/2025;10;;;;;;
            """;

    private TestGroup group;
    private Browser ilse;
    private Browser tom;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        ilse = group.signedIn(group.coordinator());
        tom = group.signedIn(group.member());
    }

    @AfterEach
    void close() {
        group.close();
    }

    private static Upload sowings(String text) {
        return new Upload().field("kind", "sowings").file("old list.csv", text);
    }

    private int count() {
        return group.database().sql().fetchCount(SOWING);
    }

    @Test
    void an_old_list_is_looked_at_taken_in_and_known_again() {
        String list = OLD_LIST.replace("Priya Raman", group.onDuty().name());
        String address = Waiting.sent(ilse, sowings(list));
        assertThat(ilse.get(address).text())
                .contains("3 rows good")
                .contains("2026: pepper, ‘Lantern Row’, Tom, sown on 2026-03-14, 18 of 20 came up")
                .contains("not counted")
                .contains("Columns that are not taken in: colour.")
                .contains("Dates are read as month, day, year");
        assertThat(count()).isZero();

        Waiting.take(ilse, address);

        assertThat(ilse.get(address).text()).contains("Taken in.").contains("3 rows taken in");
        assertThat(group.database().sql().fetchValues(SOWING.STAGE))
                .containsExactlyInAnyOrder("planted-out", "given-up", "not-recorded");
        assertThat(ilse.get("/files").text()).contains("old list.csv, 3 sowings");
        assertThat(ilse.get(Waiting.sent(ilse, sowings(list))).text())
                .contains("3 rows left out")
                .contains("There is nothing new in it.");
    }

    @Test
    void what_the_list_tells_is_learned_from_and_read_in_its_season() {
        take(ilse, sowings(OLD_LIST.replace("Priya Raman", group.onDuty().name())));

        assertThat(tom.get("/findings/2026").text())
                .contains("Of 20 seeds that were counted and are waited for no longer, 18 came")
                .contains("2 sowings");
        assertThat(tom.get("/season/2026").text())
                .contains("It was never closed.")
                .contains("Lantern Row");
        assertThat(tom.get("/season").text()).contains("2026").contains("2025");
    }

    @Test
    void it_takes_no_place_and_makes_no_work() {
        take(ilse, sowings(OLD_LIST.replace("Priya Raman", group.onDuty().name())));

        assertThat(group.database().sql().fetchCount(STAY)).isZero();
        assertThat(group.database().sql().fetchValues(LOT.SEEDS_LEFT)).containsOnly(0);
        assertThat(tom.get("/today?show=all").text()).doesNotContain("Lantern Row");
        assertThat(tom.get("/supplies").text()).contains("Nothing is needed.");
        assertThat(ilse.get("/requests").text()).contains("Nothing waits for a decision.");
    }

    @Test
    void a_member_brings_in_their_own_alone() {
        take(
                tom,
                sowings(
                        "season,crop,variety,sown_on,seeds,grower\n2026,pepper,Lantern Row,2026-03-14,20,Ilse Brandt\n"));

        assertThat(group.database().sql().fetchValue(SOWING.MEMBER_ID))
                .isEqualTo(group.member().id());
        assertThat(group.database().sql().fetchValues(ENTRY.TYPED_BY))
                .containsOnly(group.member().id());
    }

    @Test
    void each_rows_trouble_is_named_and_nothing_is_taken_in() {
        String address = Waiting.sent(ilse, sowings("""
                        season,grower,crop,variety,method,warm,sown_on,seeds,came_up,counted_on,lost,planted_out_on,given_up
                        2027,Tom Okafor,pepper,A,,,2026-03-14,20,,,,,
                        2026,Nobody,pepper,B,,,2026-03-14,20,,,,,
                        2026,Tom Okafor,peper,C,,,2026-03-14,20,,,,,
                        2026,Tom Okafor,pepper,D,tray,,2026-03-14,20,,,,,
                        2026,Tom Okafor,pepper,E,,perhaps,2026-03-14,20,,,,,
                        2026,Tom Okafor,pepper,F,,,2023-03-14,20,,,,,
                        2026,Tom Okafor,pepper,G,,,03/04/2026,20,,,,,
                        2026,Tom Okafor,pepper,H,,,2026-03-14,0,,,,,
                        2026,Tom Okafor,pepper,I,,,2026-03-14,20,21,2026-04-01,,,
                        2026,Tom Okafor,pepper,J,,,2026-03-14,20,10,,,,
                        2026,Tom Okafor,pepper,K,,,2026-03-14,20,10,2026-03-01,,,
                        2026,Tom Okafor,pepper,L,,,2026-03-14,20,10,2026-04-01,11,,
                        2026,Tom Okafor,pepper,M,,,2026-03-14,20,,,,2026-05-30,yes
                        """));

        assertThat(ilse.get(address).text())
                .contains("season was '2027'; a whole number from 1990 to 2026 is accepted.")
                .contains("grower was ‘Nobody’")
                .contains("crop was ‘peper’")
                .contains("method was 'tray'")
                .contains("warm was ‘perhaps’; true or false is accepted")
                .contains("sown_on was ‘2023-03-14’; a day from 2025-01-01 to 2027-03-01 is accepted")
                .contains("sown_on was ‘03/04/2026’, which could be two days")
                .contains("seeds was '0'")
                .contains("came_up was '21'; a whole number from 0 to 20 is accepted.")
                .contains("counted_on was empty; the day on which came_up was counted is accepted")
                .contains("counted_on was ‘2026-03-01’; a day from 2026-03-14 to 2027-03-01 is accepted")
                .contains("lost was '11'; a whole number from 0 to 10 is accepted.")
                .contains("given_up was yes, and planted_out_on has a day");
        assertThat(ilse.post(address + "/taking").status()).isEqualTo(409);
        assertThat(count()).isZero();
    }

    private static void take(Browser browser, Upload upload) {
        String address = Waiting.sent(browser, upload);
        assertThat(browser.get(address).text()).doesNotContain("cannot be taken in");
        Waiting.take(browser, address);
        assertThat(browser.get(address).text()).contains("Taken in.");
    }
}
