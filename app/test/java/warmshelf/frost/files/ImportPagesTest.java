package warmshelf.frost.files;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.FROST_IMPORT;
import static warmshelf.db.generated.Tables.FROST_STATION;
import static warmshelf.db.generated.Tables.FROST_STATION_DATE;
import static warmshelf.db.generated.Tables.POSTCODE_PLACE;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;
import warmshelf.testing.Upload;

class ImportPagesTest {
    private static final String STATIONS = """
            station,latitude,longitude,elevation_m,spring_p50,autumn_p50
            Lakeside,46.8,-92.1,180,05-14,10-10
            Hilltop,46.9,-92.2,1420000,05-20,09-28
            """;
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private TestGroup group;
    private Browser ilse;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        ilse = group.signedIn(group.coordinator());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void a_file_is_sent_looked_at_and_taken_and_removed_again() {
        String address = sent(new Upload()
                .field("kind", "tell")
                .field("source", "County table")
                .file("s.csv", STATIONS));

        Answer ready = read(address);
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
                .contains("Removed, by Ilse Brandt");
        assertThat(leftFiles()).isZero();
    }

    @Test
    void the_second_of_two_who_decide_is_told() {
        String address = sent(new Upload().field("kind", "stations").file("s.csv", STATIONS));
        read(address);

        assertThat(ilse.post(address + "/taking").status()).isEqualTo(303);
        Answer second = ilse.post(address + "/cancellation");

        assertThat(second.status()).isEqualTo(409);
        assertThat(second.text()).contains("decided meanwhile").contains("by Ilse Brandt");
    }

    @Test
    void discarding_keeps_nothing() {
        String address = sent(new Upload().field("kind", "stations").file("s.csv", STATIONS));
        read(address);

        assertThat(ilse.post(address + "/cancellation").status()).isEqualTo(303);
        assertThat(group.database().sql().fetchCount(FROST_STATION)).isZero();
        assertThat(ilse.get(address).text()).contains("Given up");
    }

    @Test
    void nights_are_shown_with_dates_at_three_thresholds_before_they_are_taken() {
        String address = sent(new Upload()
                .field("kind", "nights")
                .field("name", "Our garden")
                .field("latitude", "46.8")
                .field("longitude", "-92.1")
                .field("elevation", "600")
                .file("garden.csv", ImportReaderTest.nights()));

        assertThat(read(address).text())
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
        String address = sent(new Upload()
                .field("kind", "tell")
                .file("GB.txt", ImportReaderTest.postcode("GB", "AB1 0AA", "Aberdeen", "57.1", "-2.2")));

        assertThat(read(address).text())
                .contains("GB: 1 postcode ")
                .contains("GB AB10AA")
                .contains("GeoNames");
        assertThat(ilse.post(address + "/taking").status()).isEqualTo(303);
        assertThat(group.database().sql().fetchCount(POSTCODE_PLACE)).isEqualTo(1);
    }

    @Test
    void normals_of_several_files_come_in_one_form() {
        String address = sent(new Upload()
                .field("kind", "tell")
                .file("USW00014735.csv", Normals.FILE)
                .file("X1.csv", Normals.FILE.replace("USW00014735", "X1")));

        assertThat(read(address).text())
                .contains("2 stations")
                .contains("27 Apr")
                .contains("15 Oct");
        assertThat(group.database().sql().fetchCount(FROST_STATION_DATE)).isEqualTo(8);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "nights|date,tmin;2021-03-01,300|Line 2: a minimum of 300 °C is no night on earth",
                "nights|date,tmin;2021-03-01,-1;3.5,2021-03-02|Line 3: '3.5' stands where the date should be",
                "nights|date,tmin;2021-03-01,-1;2021-03-01,-2|Line 3: 2021-03-01 has a minimum already",
                "nights|date,tmin;03-14,-1|a date with its year",
                "nights|date,tmin;2021-03-01,-1|There are minima of 1 nights in the file; at least 300",
                "stations|latitude,spring_p50;1,05-14|no column longitude, elevation_m, autumn_p50",
                "stations|latitude,longitude,elevation_m,spring_p50,autumn_p50;05-14,10-10,180,46.8,-92.1|Not one row could be used"
            })
    void a_file_with_mistakes_is_refused_by_line_and_leaves_nothing(String kind, String text, String sentence) {
        String address = sent(placed(new Upload().field("kind", kind).file("sent.csv", text.replace(';', '\n'))));

        assertThat(read(address).text()).contains("Refused").contains(sentence);
        assertThat(ilse.post(address + "/taking").status()).isEqualTo(409);
        assertThat(group.database().sql().fetchCount(FROST_STATION)).isZero();
        assertThat(leftFiles()).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tell|<!DOCTYPE html>;<title>404</title>|is a page of a web site",
                "tell|''|The file is empty",
                "tell|Dear all;here is the list|none of the files that can be read",
                "postcodes|date,tmin;2021-03-01,-1|You chose postcodes of a country, but",
                "nights|date,tmin;2021-03-01,-1|Latitude is empty, and this file does not say where its station lies",
                "magic|date,tmin;2021-03-01,-1|What it is was 'magic'"
            })
    void what_cannot_be_used_is_told_at_once_and_nothing_typed_is_lost(String kind, String text, String sentence) {
        Answer answer = new Upload()
                .field("kind", kind)
                .field("source", "my notes")
                .file("sent.csv", text.replace(';', '\n'))
                .post(ilse, "/frost/imports");

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence).contains("please choose it again");
        assertThat(answer.typed("source")).isEqualTo("my notes");
        assertThat(group.database().sql().fetchCount(FROST_IMPORT)).isZero();
        assertThat(leftFiles()).isZero();
    }

    @Test
    void a_binary_and_no_file_at_all_are_told() {
        byte[] binary = {(byte) 0x89, 'P', 'N', 'G', 0, 0, 1, 2, 3};

        assertThat(new Upload()
                        .field("kind", "tell")
                        .file("a.png", binary)
                        .post(ilse, "/frost/imports")
                        .text())
                .contains("is no text file");
        assertThat(new Upload()
                        .field("kind", "tell")
                        .file("", "")
                        .post(ilse, "/frost/imports")
                        .text())
                .contains("No file was chosen");
        assertThat(ilse.post("/frost/imports", Map.of("kind", "tell")).text()).contains("No file was chosen");
    }

    @Test
    void a_small_zip_that_unpacks_to_more_than_a_gigabyte_is_refused() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry("stations.csv"));
            zip.write(STATIONS.getBytes(StandardCharsets.UTF_8));
            byte[] lines = (" ".repeat(99_999) + "\n").repeat(10).getBytes(StandardCharsets.UTF_8);
            for (int i = 0; i < 1001; i++) {
                zip.write(lines);
            }
        }

        String address = sent(new Upload().field("kind", "tell").file("s.zip", bytes.toByteArray()));

        assertThat(read(address).text()).contains("Refused").contains("unpacks to more than 1,000 MB");
    }

    @Test
    void a_zip_that_was_cut_short_is_refused() throws IOException {
        byte[] zip = NormalsFileTest.zip(Map.of("s.csv", STATIONS.repeat(2000)));
        byte[] cut = java.util.Arrays.copyOf(zip, zip.length / 2);

        Answer answer =
                new Upload().field("kind", "stations").file("s.zip", cut).post(ilse, "/frost/imports");

        assertThat(answer.status()).isEqualTo(303);
        assertThat(read(answer.location()).text()).contains("damaged or cut short");
    }

    @Test
    void more_than_250_megabytes_are_refused_with_a_sentence() {
        Answer answer = new Upload()
                .field("kind", "tell")
                .file("large.csv", 300_000_000, () -> zeros(300_000_000))
                .post(ilse, "/frost/imports");

        assertThat(answer.status()).isEqualTo(413);
        assertThat(answer.text()).contains("files of up to 250 MB are accepted");
        assertThat(leftFiles()).isZero();
    }

    @Test
    void a_sender_who_does_not_tell_the_length_is_stopped_at_the_limit() {
        Answer answer = new Upload()
                .field("kind", "tell")
                .file("large.csv", 300_000_000, () -> zeros(300_000_000))
                .postInPieces(ilse, "/frost/imports");

        assertThat(answer.status()).isEqualTo(413);
        assertThat(leftFiles()).isZero();
    }

    @Test
    void a_field_as_large_as_a_file_is_refused() {
        Answer answer = new Upload()
                .field("kind", "tell")
                .field("source", "x".repeat(2_000_000))
                .file("s.csv", STATIONS)
                .post(ilse, "/frost/imports");

        assertThat(answer.status()).isEqualTo(413);
    }

    @Test
    void other_addresses_still_take_one_megabyte() {
        Answer answer = new Upload().file("s.csv", "x".repeat(2_000_000)).post(ilse, "/frost/months");

        assertThat(answer.status()).isEqualTo(413);
        assertThat(answer.text()).contains("at most 1 MB");
    }

    @Test
    void only_coordinators_send_files_and_only_with_their_forms_token() {
        Browser tom = group.signedIn(group.member());
        Upload upload = new Upload().field("kind", "tell").file("s.csv", STATIONS);

        assertThat(upload.post(tom, "/frost/imports").status()).isEqualTo(403);
        assertThat(upload.postWithoutToken(ilse, "/frost/imports").status()).isEqualTo(403);
        assertThat(upload.postWithoutToken(group.stranger(), "/frost/imports").status())
                .isEqualTo(401);
        assertThat(group.database().sql().fetchCount(FROST_IMPORT)).isZero();
        assertThat(leftFiles()).isZero();
    }

    @Test
    void members_read_but_have_nothing_to_press() {
        String address = sent(new Upload().field("kind", "stations").file("s.csv", STATIONS));
        read(address);

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

    private static Upload placed(Upload upload) {
        return upload.field("latitude", "46.8").field("longitude", "-92.1").field("elevation", "600");
    }

    private String sent(Upload upload) {
        Answer answer = upload.post(ilse, "/frost/imports");
        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
        return answer.location();
    }

    /** The page once the reading has ended, however long that takes, as long as it gets on. */
    private Answer read(String address) {
        long movedAt = System.nanoTime();
        String before = "";
        for (String now = progress(address); now.contains("\"busy\":true"); now = progress(address)) {
            if (!now.equals(before)) {
                movedAt = System.nanoTime();
                before = now;
            }
            assertThat(System.nanoTime() - movedAt).as("the reading gets on").isLessThan(PATIENCE.toNanos());
            LockSupport.parkNanos(5_000_000);
        }
        return ilse.get(address);
    }

    private String progress(String address) {
        return ilse.getJson(address).body();
    }

    private static InputStream zeros(long length) {
        return new InputStream() {
            private long left = length;

            @Override
            public int read() {
                return left-- > 0 ? '0' : -1;
            }

            @Override
            public int read(byte[] into, int from, int wanted) {
                if (left <= 0) {
                    return -1;
                }
                int some = (int) Math.min(wanted, left);
                java.util.Arrays.fill(into, from, from + some, (byte) '0');
                left -= some;
                return some;
            }
        };
    }

    /** Number of files of this process left in its temporary folders. */
    private static long leftFiles() {
        long until = System.nanoTime() + PATIENCE.toNanos();
        long left = countLeft();
        // the server throws away what it received just after it has answered
        while (left > 0 && System.nanoTime() < until) {
            LockSupport.parkNanos(5_000_000);
            left = countLeft();
        }
        return left;
    }

    private static long countLeft() {
        String pid = String.valueOf(ProcessHandle.current().pid());
        try (Stream<Path> folders = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            long count = 0;
            for (Path folder : folders.filter(
                            path -> path.getFileName().toString().startsWith("warmshelf-uploads-" + pid))
                    .toList()) {
                try (Stream<Path> files = Files.walk(folder)) {
                    count += files.filter(Files::isRegularFile).count();
                }
            }
            return count;
        } catch (IOException | java.io.UncheckedIOException gone) {
            return 1;
        }
    }
}
