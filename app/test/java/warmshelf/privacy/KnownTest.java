package warmshelf.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import warmshelf.loop.Cellar;

/** What a member gets of all that is known of them. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class KnownTest {
    private Cellar cellar;
    private KnownPerson known;

    @BeforeAll
    void open() {
        cellar = Cellar.open();
        known = KnownPerson.in(cellar);
    }

    @AfterAll
    void close() {
        cellar.close();
    }

    @Test
    void the_page_tells_in_words_all_that_the_database_holds() {
        String page = cellar.member().get("/settings/known").text();

        assertThat(page)
                .contains(KnownPerson.words(cellar.group()))
                .contains("Your sowings: ", "Your sowings: 2 Crop Season", "How you come in: ", "Tokens for scripts: 1")
                .contains("letters and notices 90 days", "Take it along as files", "Have yourself erased")
                .doesNotContain("Name key", "Version")
                .doesNotContain("Ilse Brandt")
                .doesNotContain("argon2");
    }

    @Test
    void the_files_hold_the_same_with_what_the_columns_mean_and_the_photos() throws Exception {
        Map<String, byte[]> parts = parts();

        assertThat(text(parts, "tables/member.csv")).contains("Tom Okafor,tom okafor,member,US,55804");
        assertThat(text(parts, "dictionary.csv"))
                .contains("member,postcode,text,false,Where the garden is; its frost dates are told from it.");
        assertThat(parts.get("photos/" + known.photo + ".jpg")).hasSize(4);
        String all =
                String.join("", parts.values().stream().map(KnownTest::text).toList());
        assertThat(all).contains(KnownPerson.words(cellar.group())).doesNotContain("Ilse", "argon2");
        assertThat(text(parts, "tables/stay.csv")).contains("somebody else");
    }

    /** Read back by commons-csv and Jackson, which know nothing of this program. */
    @Test
    void each_table_is_the_same_as_csv_and_as_json() throws Exception {
        Map<String, byte[]> parts = parts();
        int tables = 0;
        for (String name : parts.keySet()) {
            if (name.startsWith("tables/")) {
                tables++;
                var rows = new ObjectMapper()
                        .readTree(parts.get(name.replace("tables/", "data/").replace(".csv", ".json")));
                try (var csv =
                        CSVFormat.RFC4180.builder().setHeader().get().parse(new StringReader(text(parts, name)))) {
                    int row = 0;
                    for (CSVRecord each : csv) {
                        assertThat(rows.get(row++).size()).as(name).isEqualTo(each.size());
                    }
                    assertThat(rows).as(name).hasSize(row);
                }
            }
        }
        assertThat(tables).isGreaterThan(15);
    }

    @Test
    void a_stranger_gets_nothing() {
        assertThat(cellar.group().stranger().get("/settings/known.zip").status())
                .isEqualTo(303);
    }

    private Map<String, byte[]> parts() throws Exception {
        HttpResponse<byte[]> answer = HttpClient.newHttpClient()
                .send(
                        cellar.member().request("/settings/known.zip").GET().build(),
                        HttpResponse.BodyHandlers.ofByteArray());
        assertThat(answer.statusCode()).isEqualTo(200);
        Map<String, byte[]> parts = new HashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(answer.body()))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), zip.readAllBytes());
            }
        }
        return parts;
    }

    private static String text(Map<String, byte[]> parts, String name) {
        return text(Objects.requireNonNull(parts.get(name)));
    }

    private static String text(byte[] part) {
        return new String(part, StandardCharsets.UTF_8);
    }
}
