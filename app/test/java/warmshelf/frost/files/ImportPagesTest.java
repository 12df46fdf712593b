package warmshelf.frost.files;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.FROST_IMPORT;
import static warmshelf.db.generated.Tables.FROST_STATION;
import static warmshelf.db.generated.Tables.FROST_STATION_DATE;
import static warmshelf.db.generated.Tables.POSTCODE_PLACE;

import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;
import warmshelf.testing.Upload;

class ImportPagesTest {
    private TestGroup group;
    private Browser ilse;
    private SentFiles files;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        ilse = group.signedIn(group.coordinator());
        files = new SentFiles(ilse);
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void a_file_is_sent_looked_at_and_taken_and_removed_again() {
        String address = files.sent(new Upload()
                .field("kind", "tell")
                .field("source", "County table")
                .file("s.csv", SentFiles.STATIONS));

        Answer ready = files.read(address);
        assertThat(ready.text())
                .contains("1 station. Nothing counts yet.")
                .contains("Lakeside")
                .contains("14 May")
                .contains("elevation_m was '1420000'; a number from -430 to 6500 is accepted.");
        assertThat(ilse.get("/frost/evidence").text()).contains("Stations in use: 0");

        assertThat(ilse.post(address + "/taking").status()).isEqualTo(303);
        assertThat(group.signedIn(group.member()).get("/frost/evidence").text())
                .contains("Stations in use: 1")
                .contains("County table")
                .contains("591 ft"); // the group reads feet

        assertThat(ilse.post(address + "/removal").status()).isEqualTo(303);
        assertThat(ilse.get("/frost/evidence").text())
                .contains("Stations in use: 0")
                .contains("Removed, by Ilse");
        assertThat(SentFiles.leftFiles()).isZero();
    }

    @Test
    void the_second_of_two_who_decide_is_told() {
        String address = files.sent(new Upload().field("kind", "stations").file("s.csv", SentFiles.STATIONS));
        files.read(address);
        assertThat(ilse.get("/requests").text()).contains("Also s.csv was read and waits to be taken in");

        assertThat(ilse.post(address + "/taking").status()).isEqualTo(303);
        assertThat(ilse.get("/requests").text()).doesNotContain("s.csv");
        Answer second = ilse.post(address + "/cancellation");

        assertThat(second.status()).isEqualTo(409);
        assertThat(second.text()).contains("decided meanwhile").contains("by Ilse");
    }

    @Test
    void discarding_keeps_nothing() {
        String address = files.sent(new Upload().field("kind", "stations").file("s.csv", SentFiles.STATIONS));
        files.read(address);

        assertThat(ilse.post(address + "/cancellation").status()).isEqualTo(303);
        assertThat(group.database().sql().fetchCount(FROST_STATION)).isZero();
        assertThat(ilse.get(address).text()).contains("Given up");
    }

    @Test
    void nights_are_shown_with_dates_at_three_thresholds_before_they_are_taken() {
        String address = files.sent(new Upload()
                .field("kind", "nights")
                .field("name", "Our garden")
                .field("latitude", "46.8")
                .field("longitude", "-92.1")
                .field("elevation", "600")
                .file("garden.csv", ImportReaderTest.nights()));

        assertThat(files.read(address).text())
                .contains("Our garden")
                .contains("600 ft above the sea")
                .contains("12, 2010–2021")
                .contains("10 May")
                .contains("5 Oct")
                .contains("28 °F")
                .contains("36 °F");
    }

    @Test
    void postcodes_are_shown_by_country_with_whom_to_thank() {
        String address = files.sent(new Upload()
                .field("kind", "tell")
                .file("GB.txt", ImportReaderTest.postcode("GB", "AB1 0AA", "Aberdeen", "57.1", "-2.2")));

        assertThat(files.read(address).text())
                .contains("GB: 1 postcode ")
                .contains("GB AB10AA")
                .contains("GeoNames");
        assertThat(ilse.post(address + "/taking").status()).isEqualTo(303);
        assertThat(group.database().sql().fetchCount(POSTCODE_PLACE)).isEqualTo(1);
    }

    @Test
    void normals_of_several_files_come_in_one_form() {
        String address = files.sent(new Upload()
                .field("kind", "tell")
                .file("USW00014735.csv", Normals.FILE)
                .file("X1.csv", Normals.FILE.replace("USW00014735", "X1")));

        assertThat(files.read(address).text())
                .contains("2 stations")
                .contains("27 Apr")
                .contains("15 Oct");
        assertThat(group.database().sql().fetchCount(FROST_STATION_DATE)).isEqualTo(8);
    }

    @Test
    void only_coordinators_send_files_and_only_with_their_forms_token() {
        Browser tom = group.signedIn(group.member());
        Upload upload = new Upload().field("kind", "tell").file("s.csv", SentFiles.STATIONS);

        assertThat(upload.post(tom, "/frost/imports").status()).isEqualTo(403);
        assertThat(upload.postWithoutToken(ilse, "/frost/imports").status()).isEqualTo(403);
        assertThat(upload.postWithoutToken(group.stranger(), "/frost/imports").status())
                .isEqualTo(401);
        assertThat(group.database().sql().fetchCount(FROST_IMPORT)).isZero();
        assertThat(SentFiles.leftFiles()).isZero();
    }

    @Test
    void members_read_but_have_nothing_to_press() {
        String address = files.sent(new Upload().field("kind", "stations").file("s.csv", SentFiles.STATIONS));
        files.read(address);

        Answer seen = group.signedIn(group.member()).get(address);

        assertThat(seen.text()).contains("Lakeside").doesNotContain("Take it");
        assertThat(group.signedIn(group.member())
                        .get("/frost/imports/" + new UUID(0, 7))
                        .status())
                .isEqualTo(404);
    }

    @Test
    void a_reading_whose_program_was_stopped_says_so_and_can_be_cleared_away() {
        UUID id = new ImportStore(group.database(), group.audit())
                .begin(ImportKind.STATIONS, "s.csv", 10, group.coordinator().id());
        assertThat(ilse.get("/frost/imports/" + id).body())
                .contains("<progress")
                .contains("http-equiv=\"refresh\"");
        assertThat(ilse.getJson("/frost/imports/" + id).body()).contains("\"busy\":true");

        group.clock().set(TestGroup.MORNING.plusSeconds(61));

        assertThat(ilse.get("/frost/imports/" + id).text())
                .contains("The program was stopped")
                .contains("Send the file again");
        assertThat(ilse.post("/frost/imports/" + id + "/cancellation").status()).isEqualTo(303);
    }
}
