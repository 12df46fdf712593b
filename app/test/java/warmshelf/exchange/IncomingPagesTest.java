package warmshelf.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.ACCESS_LINK;
import static warmshelf.db.generated.Tables.INCOMING_TABLE;
import static warmshelf.db.generated.Tables.LOT;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;
import warmshelf.testing.Upload;

class IncomingPagesTest {
    private static final String LOTS = """
            crop,variety,year,seeds_left,treated,source,storage,tests,note
            pepper,Jalapeño,2026,40,no,saved,fridge,2027-02-01 8/10,from our own plants
            Tomato,Brandywine,2025,,yes,,,,"two
            lines"
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

    private static Upload lots(String text) {
        return new Upload().field("kind", "lots").field("whose", "mine").file("lots.csv", text);
    }

    private int rows() {
        return group.database().sql().fetchCount(LOT);
    }

    @Test
    void lots_are_looked_at_then_taken_in_and_known_again() {
        String address = Waiting.sent(tom, lots(LOTS));

        assertThat(tom.get(address).text())
                .contains("2 rows good")
                .contains("Read as UTF-8 with commas")
                .contains("pepper, ‘Jalapeño’, 2026, 40 seeds, one test")
                .contains("tomato, ‘Brandywine’, 2025, not counted")
                .contains("Nothing of it is taken in yet.");
        assertThat(rows()).isZero();

        Waiting.take(tom, address);
        assertThat(tom.get(address).text()).contains("Taken in.").contains("2 rows taken in");
        assertThat(rows()).isEqualTo(2);
        assertThat(tom.get("/seeds").text()).contains("Jalapeño").contains("Brandywine");
        assertThat(tom.get("/files").text()).contains("lots.csv, 2 lots");

        String again = Waiting.sent(tom, lots(LOTS));
        assertThat(tom.get(again).text())
                .contains("This very file was taken in before")
                .contains("There is nothing new in it.")
                .contains("2 rows left out")
                .doesNotContain("Take in 2 rows");
        assertThat(tom.post(again + "/taking").status()).isEqualTo(409);
        assertThat(rows()).isEqualTo(2);
        assertThat(leftFiles()).isEqualTo(1); // the second still waits for a decision
    }

    @Test
    void saved_anew_with_other_separators_the_rows_are_known_all_the_same() {
        take(tom, lots("crop,variety,year,source\npepper,Jalapeño,2026,packet\npepper,Jalapeño,2026,packet\n"));
        String again = Waiting.sent(
                tom, lots("\uFEFFYear;Crop;Variety\r\n2026;PEPPER;Jalapeño\r\n2026;pepper;Jalapeño\r\n;;\r\n"));

        // two packets alike are two, in the second file as in the first
        assertThat(rows()).isEqualTo(2);
        assertThat(tom.get(again).text()).contains("2 rows left out").contains("semicolons");
    }

    private void take(Browser browser, Upload upload) {
        String address = Waiting.sent(browser, upload);
        Waiting.take(browser, address);
        assertThat(browser.get(address).text()).contains("Taken in.");
    }

    @Test
    void what_is_sent_twice_counts_once() {
        String address = Waiting.sent(tom, lots(LOTS));
        Map<String, String> form = Map.of("submission", UUID.randomUUID().toString());

        assertThat(tom.post(address + "/taking", form).status()).isEqualTo(303);
        assertThat(tom.post(address + "/taking", form).location()).isEqualTo(address);
        Waiting.untilRead(tom, address);
        assertThat(tom.post(address + "/taking").location()).isEqualTo(address);
        assertThat(tom.post(address + "/cancellation").status()).isEqualTo(409);

        assertThat(rows()).isEqualTo(2);
        assertThat(group.database().sql().fetchCount(INCOMING_TABLE)).isEqualTo(1);
    }

    @Test
    void each_rows_trouble_is_named_and_nothing_is_taken_in() {
        String address = Waiting.sent(tom, lots("""
                        crop,variety,year,seeds_left,treated,source,storage,storage_celsius,storage_moisture_percent,tests,id,colour
                        peper,A,2026,,,,,,,,,
                        pepper,,2026,,,,,,,,,
                        pepper,B,26,,,,,,,,,
                        pepper,C,2026,many,,,,,,,,
                        pepper,D,2026,,perhaps,,,,,,,
                        pepper,E,2026,,,shop,,,,,,
                        pepper,F,2026,,,,own,"4,5",6,2027-02-01 11/10,,
                        pepper,G,2026,,,,own,99,6,,,
                        pepper,H,2026,,,,,,,often,,
                        pepper,I,2026,,,,,,,,12,
                        pepper,J,2026,,,,,,,,,,,too,many
                        pepper,K,2026,,,,,,,,,
                        """));

        assertThat(tom.get(address).text())
                .contains("1 row good")
                .contains("11 rows that cannot be taken in")
                .contains("crop was ‘peper’")
                .contains("Variety is empty")
                .contains("Year of the seed was '26'")
                .contains("Seeds left was 'many'")
                .contains("treated was ‘perhaps’")
                .contains("Where it came from was 'shop'")
                .contains("Seeds that came up")
                .contains("Temperature in °C was '99'")
                .contains("tests were ‘often’")
                .contains("id was ‘12’")
                .contains("The row has 15 cells, but only 12 columns have a name")
                .contains("Columns that are not taken in: colour.")
                .doesNotContain("Take in");
        assertThat(tom.post(address + "/taking").status()).isEqualTo(409);
        assertThat(rows()).isZero();
        assertThat(tom.post(address + "/cancellation").status()).isEqualTo(303);
        assertThat(leftFiles()).isZero();
    }

    @Test
    void a_row_that_is_good_no_more_undoes_all_others() {
        String text = "id,crop,variety,year\n%s,pepper,A,2026\n%s,pepper,B,2026\n"
                .formatted(UUID.randomUUID(), UUID.randomUUID());
        String address = Waiting.sent(
                ilse,
                new Upload()
                        .field("kind", "lots")
                        .field("whose", "column")
                        .file("l.csv", text.replace("year\n", "year,owner\n").replace("2026\n", "2026,Tom Okafor\n")));
        assertThat(ilse.get(address).text()).as("a good file").contains("2 rows good");
        String tomsId = group.database()
                .sql()
                .fetchValue("select id from member where name = 'Tom Okafor'")
                .toString();
        group.database().sql().execute("update member set left_at = current_timestamp where id = '" + tomsId + "'");

        Waiting.take(ilse, address);

        assertThat(ilse.get(address).text()).contains("Something changed since the file was looked at");
        assertThat(rows()).isZero();
    }

    @Test
    void a_member_sees_nobody_elses_file() {
        String address = Waiting.sent(ilse, lots(LOTS));

        assertThat(tom.get(address).status()).isEqualTo(404);
        assertThat(tom.post(address + "/taking").status()).isEqualTo(404);
        assertThat(tom.get("/files/incoming/" + UUID.randomUUID()).text()).contains("not here any more");
    }

    @Test
    void a_guessed_charset_is_said() {
        String address = Waiting.sent(
                tom,
                new Upload()
                        .field("kind", "lots")
                        .field("whose", "group")
                        .file(
                                "old.csv",
                                "crop;variety;year\npepper;Jalapeño;2026\n".getBytes(Charset.forName("windows-1252"))));

        assertThat(tom.get(address).text())
                .contains("Read as windows-1252 with semicolons")
                .contains("The letters are a guess")
                .contains("Jalapeño");
    }

    @Test
    void what_is_no_table_is_refused_with_a_sentence_and_nothing_stays() {
        for (Map.Entry<String, String> each : Map.of(
                        "", "The file is empty",
                        "name,colour\nx,y\n", "no column crop",
                        "crop,variety,year\n", "no rows",
                        "crop,variety,year\n\"pepper,A,2026\n", "quotation mark",
                        "crop,variety,year\npep\u0000per,A,2026\n", "NUL")
                .entrySet()) {
            String address = Waiting.sent(tom, lots(each.getKey()));
            assertThat(tom.get(address).text()).contains(each.getValue()).contains("Send another table");
        }
        assertThat(leftFiles()).isZero();
    }

    @Test
    void a_table_of_200_mb_is_refused_before_it_is_read() {
        long size = 200_000_000;
        Answer answer = new Upload()
                .field("kind", "lots")
                .field("whose", "mine")
                .file("large.csv", size, () -> new InputStream() {
                    private long left = size;

                    @Override
                    public int read() {
                        return left-- > 0 ? 'a' : -1;
                    }

                    @Override
                    public int read(byte[] into, int from, int length) {
                        int read = (int) Math.min(left, length);
                        left -= read;
                        return read == 0 ? -1 : read;
                    }
                })
                .post(tom, "/files/incoming");

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("The file has 200 MB; at most 20 MB are accepted at once.");
        assertThat(leftFiles()).isZero();
    }

    @Test
    void a_form_without_what_it_needs_is_told_what() {
        assertThat(new Upload()
                        .field("kind", "lots")
                        .post(tom, "/files/incoming")
                        .text())
                .contains("No file was chosen")
                .contains("Whose they are was ''");
        assertThat(new Upload()
                        .field("kind", "moon")
                        .post(tom, "/files/incoming")
                        .status())
                .isEqualTo(422);
        assertThat(new Upload()
                        .field("kind", "nights")
                        .file("n.csv", "day,celsius\n")
                        .post(tom, "/files/incoming")
                        .text())
                .contains("No thermometer was chosen");
        assertThat(tom.get("/files/incoming/new/members").status()).isEqualTo(403);
        assertThat(new Upload()
                        .field("kind", "members")
                        .file("m.csv", "name\nAda\n")
                        .post(tom, "/files/incoming")
                        .status())
                .isEqualTo(403);
    }

    @Test
    void names_become_links_that_are_shown_to_whoever_made_them() {
        String address = Waiting.sent(
                ilse,
                new Upload()
                        .field("kind", "members")
                        .file("people.csv", "Name,Role\nAda Moss,\nGrace Lund,Coordinator\nTOM  Okafor,member\n"));
        assertThat(ilse.get(address).text())
                .contains("A link for Ada Moss, to join as a member")
                .contains("A link for Grace Lund, to join as a coordinator")
                .contains("Belongs to the group already.")
                .contains("Make 2 links");
        int before = group.database().sql().fetchCount(ACCESS_LINK);

        Waiting.take(ilse, address);

        assertThat(group.database().sql().fetchCount(ACCESS_LINK)).isEqualTo(before + 2);
        Matcher link =
                Pattern.compile("/join/[\\w-]+").matcher(ilse.get(address).body());
        assertThat(link.find()).isTrue();
        assertThat(group.stranger().get(link.group()).status()).isEqualTo(200);
        assertThat(tom.get(address).status()).isEqualTo(404);

        String again = Waiting.sent(
                ilse, new Upload().field("kind", "members").file("p.csv", "name\nada moss\nBo\nBo\nx,y\n"));
        assertThat(ilse.get(again).text())
                .contains("Has an open link to join already.")
                .contains("name was ‘Bo’, which stands on an earlier row too")
                .contains("The row has 2 cells");
    }

    @Test
    void whoever_coordinates_no_more_takes_no_names_in() {
        String address =
                Waiting.sent(ilse, new Upload().field("kind", "members").file("p.csv", "name\nAda Moss\n"));
        int before = group.database().sql().fetchCount(ACCESS_LINK);
        group.database().sql().execute("update member set role = 'member' where name = 'Ilse Brandt'");
        Browser stillIlse = group.signedIn(group.coordinator());

        assertThat(stillIlse.post(address + "/taking").status()).isEqualTo(403);
        assertThat(group.database().sql().fetchCount(ACCESS_LINK)).isEqualTo(before);
    }

    @Test
    void of_many_files_that_wait_the_oldest_gives_way() {
        String first = Waiting.sent(tom, lots(LOTS));
        for (int i = 0; i < 5; i++) {
            Waiting.sent(tom, lots(LOTS));
        }
        assertThat(tom.get(first).status()).isEqualTo(404);
        assertThat(leftFiles()).isEqualTo(5);
    }

    /** Files that wait in the folders of what was sent to this process. */
    private static long leftFiles() {
        String ours = "warmshelf-uploads-%d-*".formatted(ProcessHandle.current().pid());
        long left = 0;
        try (DirectoryStream<Path> servers =
                Files.newDirectoryStream(Path.of(System.getProperty("java.io.tmpdir")), ours)) {
            for (Path server : servers) {
                try (Stream<Path> files = Files.walk(server)) {
                    left += files.filter(file -> file.getFileName().toString().startsWith("file-"))
                            .count();
                }
            }
            return left;
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }
}
