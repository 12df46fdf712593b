package warmshelf.frost.files;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.FROST_IMPORT;
import static warmshelf.db.generated.Tables.FROST_STATION;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.zip.GZIPOutputStream;
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

class RefusedFilesTest {
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
        String address = files.sent(
                SentFiles.placed(new Upload().field("kind", kind).file("sent.csv", text.replace(';', '\n'))));

        assertThat(files.read(address).text()).contains("Refused").contains(sentence);
        assertThat(ilse.post(address + "/taking").status()).isEqualTo(409);
        assertThat(group.database().sql().fetchCount(FROST_STATION)).isZero();
        assertThat(SentFiles.leftFiles()).isZero();
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
        assertThat(SentFiles.leftFiles()).isZero();
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
            zip.write(SentFiles.STATIONS.getBytes(StandardCharsets.UTF_8));
            byte[] lines = (" ".repeat(99_999) + "\n").repeat(10).getBytes(StandardCharsets.UTF_8);
            for (int i = 0; i < 1001; i++) {
                zip.write(lines);
            }
        }

        String address = files.sent(new Upload().field("kind", "tell").file("s.zip", bytes.toByteArray()));

        assertThat(files.read(address).text()).contains("Refused").contains("unpacks to more than 1,000 MB");
    }

    @Test
    void a_zip_that_was_cut_short_is_refused() throws IOException {
        byte[] zip = NormalsFileTest.zip(Map.of("s.csv", SentFiles.STATIONS.repeat(2000)));
        byte[] cut = java.util.Arrays.copyOf(zip, zip.length / 2);

        Answer answer =
                new Upload().field("kind", "stations").file("s.zip", cut).post(ilse, "/frost/imports");

        assertThat(answer.status()).isEqualTo(303);
        assertThat(files.read(answer.location()).text()).contains("damaged or cut short");
    }

    @Test
    void a_gzip_that_breaks_off_before_its_first_line_ends_is_told_at_once() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(bytes)) {
            gzip.write(SentFiles.STATIONS.getBytes(StandardCharsets.UTF_8));
        }
        byte[] cut = java.util.Arrays.copyOf(bytes.toByteArray(), 30);

        Answer answer = new Upload().field("kind", "tell").file("s.csv.gz", cut).post(ilse, "/frost/imports");

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("'s.csv.gz' cannot be unpacked: the file is damaged or cut short.");
        assertThat(SentFiles.leftFiles()).isZero();
    }
}
