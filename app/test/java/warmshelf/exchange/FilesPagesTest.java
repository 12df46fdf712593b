package warmshelf.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.h2.tools.Csv;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestDatabase;
import warmshelf.testing.TestGroup;
import warmshelf.testing.Upload;

class FilesPagesTest {
    private static final String LOTS = """
            crop,variety,year,seeds_left,owner,treated,source,storage,storage_celsius,storage_moisture_percent,tests,note
            pepper,Jalapeño,2026,40,Tom Okafor,no,saved,fridge,,,2027-02-01 8/10 2026-02-03 9/10,"say ""so"", twice"
            tomato,=Brandywine,2025,,,yes,packet,own,4.5,6.2,,'-quoted
            cabbage,Perfection; early,2024,0,,no,swapped,unknown,,,,
            """;

    /** Read by a second parser: the one that the database H2 brings for its function CSVREAD. */
    private static List<Map<String, String>> rows(Answer file) throws SQLException, IOException {
        assertThat(file.status()).isEqualTo(200);
        assertThat(file.header("Content-Type")).startsWith("text/csv");
        List<Map<String, String>> rows = new ArrayList<>();
        try (ResultSet read = new Csv().read(new StringReader(file.body()), null)) {
            while (read.next()) {
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 1; i <= read.getMetaData().getColumnCount(); i++) {
                    String cell = read.getString(i);
                    row.put(read.getMetaData().getColumnLabel(i).toLowerCase(Locale.ROOT), cell == null ? "" : cell);
                }
                rows.add(row);
            }
        }
        return rows;
    }

    private static void bringLots(Browser ilse, String text) {
        Answer sent = new Upload()
                .field("kind", "lots")
                .field("whose", "column")
                .file("lots.csv", text)
                .post(ilse, "/files/incoming");
        String address = Waiting.untilRead(ilse, sent.location());
        Waiting.take(ilse, address);
        assertThat(ilse.get(address).text()).contains("Taken in.");
    }

    @Test
    void lots_taken_out_and_brought_into_another_group_are_the_same_in_every_shape() {
        try (TestGroup one = TestGroup.open()) {
            Browser ilse = one.signedIn(one.coordinator());
            bringLots(ilse, LOTS);
            String before = ilse.get("/files/tables/lots.csv?for=program").body();
            assertThat(before)
                    .contains("Jalapeño")
                    .contains("'=Brandywine")
                    .contains("2026-02-03 9/10 2027-02-01 8/10");
            for (String shape : List.of("commas", "semicolons", "program")) {
                try (TestGroup other = TestGroup.open()) {
                    Browser there = other.signedIn(other.coordinator());
                    bringLots(
                            there,
                            ilse.get("/files/tables/lots.csv?for=" + shape).body());

                    assertThat(there.get("/files/tables/lots.csv?for=program").body())
                            .as(shape)
                            .isEqualTo(before);
                }
            }
        }
    }

    @Test
    void an_owner_is_known_by_the_whole_name_and_by_what_others_call_them() throws SQLException, IOException {
        try (TestGroup group = TestGroup.open()) {
            Browser ilse = group.signedIn(group.coordinator());
            bringLots(ilse, LOTS + "pepper,His,2026,1,Tom,no,packet,,,,,\n");

            assertThat(rows(group.signedIn(group.member()).get("/files/tables/lots.csv")))
                    .filteredOn(row -> "His".equals(row.get("variety")))
                    .extracting(row -> row.get("owner"))
                    .containsExactly("Tom Okafor");
        }
    }

    @Test
    void a_member_takes_out_their_own_and_the_groups_and_no_postcode_of_others() throws SQLException, IOException {
        try (TestGroup group = TestGroup.open()) {
            Browser ilse = group.signedIn(group.coordinator());
            Browser tom = group.signedIn(group.member());
            bringLots(ilse, LOTS + "pepper,Hers,2026,1,Ilse Brandt,no,packet,,,,,\n");

            assertThat(rows(tom.get("/files/tables/lots.csv")))
                    .extracting(row -> row.get("variety"))
                    .containsExactlyInAnyOrder("Jalapeño", "'=Brandywine", "Perfection; early");
            assertThat(rows(ilse.get("/files/tables/lots.csv"))).hasSize(4);
            assertThat(rows(ilse.get("/files/tables/lots.csv")))
                    .filteredOn(row -> "Hers".equals(row.get("variety")))
                    .extracting(row -> row.get("owner"))
                    .containsExactly("Ilse Brandt");
            assertThat(rows(tom.get("/files/tables/members.csv")))
                    .extracting(row -> row.get("name"))
                    .containsExactly("Tom Okafor");
            assertThat(rows(ilse.get("/files/tables/members.csv")))
                    .extracting(row -> row.get("name"))
                    .contains("Tom Okafor", "Ilse Brandt");
            assertThat(tom.get("/files").text()).contains("Your lots and the group’s");
            assertThat(tom.get("/files/tables/moon.csv").status()).isEqualTo(404);
            assertThat(tom.get("/files/tables/lots").status()).isEqualTo(404);
        }
    }

    /**
     * Names and formats: Alercia, Diulgheroff and Mackay (2015), FAO/Bioversity Multi-Crop Passport Descriptors V.2.1, descriptors
     * 2 (ACCENUMB), 5 (GENUS), 6 (SPECIES: epithet in small letters, 'sp.' allowed), 8 (SUBTAXA: 'Group' allowed), 10
     * (CROPNAME), 11 (ACCENAME), 12 (ACQDATE: YYYYMMDD), 21 (COLLSRC: 20 is 'Farm or cultivated habitat'), 26 (STORAGE: 10
     * is 'Seed collection') and 28 (REMARKS); several values of a field stand with a semicolon between them.
     */
    @Test
    void lots_go_out_by_the_passport_descriptors_of_seed_banks() throws SQLException, IOException {
        try (TestGroup group = TestGroup.open()) {
            Browser ilse = group.signedIn(group.coordinator());
            bringLots(ilse, LOTS);

            Answer file = ilse.get("/files/tables/lots-mcpd.csv");
            List<Map<String, String>> rows = rows(file);

            assertThat(file.body())
                    .startsWith("ACCENUMB,GENUS,SPECIES,SUBTAXA,CROPNAME,ACCENAME,ACQDATE,COLLSRC,STORAGE,REMARKS\r\n");
            assertThat(rows).extracting(row -> row.get("genus")).containsExactly("Brassica", "Capsicum", "Solanum");
            assertThat(rows)
                    .extracting(row -> row.get("species"))
                    .containsExactly("oleracea", "annuum", "lycopersicum");
            assertThat(rows).extracting(row -> row.get("subtaxa")).containsExactly("Capitata Group", "", "");
            assertThat(rows)
                    .extracting(row -> row.get("accename"))
                    .containsExactly("Perfection, early", "Jalapeño", "'=Brandywine");
            assertThat(rows).extracting(row -> row.get("acqdate")).containsOnly("20270301");
            assertThat(rows).extracting(row -> row.get("collsrc")).containsExactly("", "20", "");
            assertThat(rows).extracting(row -> row.get("storage")).containsOnly("10");
        }
    }

    @Test
    void what_was_seen_and_where_it_lay_go_out_too() throws SQLException, IOException {
        try (Cellar cellar = Cellar.open()) {
            String sowing = cellar.ask(Cellar.peppers());
            cellar.placeAsSuggested(sowing);
            cellar.tick(sowing, Map.of("step", "sown"));
            cellar.tick(sowing, Map.of("step", "look", "note", "=1+1"));

            List<Map<String, String>> entries = rows(cellar.member().get("/files/tables/entries.csv"));

            assertThat(entries).extracting(row -> row.get("step")).containsExactly("sown", "look");
            assertThat(entries.get(1)).containsEntry("note", "'=1+1").containsEntry("sowing", sowing);
            assertThat(rows(cellar.member().get("/files/tables/sowings.csv")))
                    .singleElement()
                    .satisfies(row ->
                            assertThat(row).containsEntry("sowing", sowing).containsEntry("crop", "pepper"));
            assertThat(rows(cellar.member().get("/files/tables/stays.csv")))
                    .isNotEmpty()
                    .allSatisfy(row -> assertThat(row).containsEntry("sowing", sowing));
        }
    }

    @Test
    void on_postgresql_all_tables_go_out_and_lots_come_in() throws SQLException, IOException {
        try (TestGroup group = TestGroup.open(TestDatabase.postgres());
                Cellar cellar = Cellar.in(group)) {
            Browser ilse = cellar.coordinator();
            bringLots(ilse, LOTS);
            cellar.placeAsSuggested(cellar.ask(Cellar.peppers()));

            assertThat(rows(ilse.get("/files/tables/lots.csv")))
                    .extracting(row -> row.get("tests"))
                    .contains("2026-02-03 9/10 2027-02-01 8/10");
            for (OutgoingTable table : OutgoingTable.values()) {
                String body = ilse.get("/files/tables/" + table.word() + ".csv").body();
                assertThat(body).startsWith(String.join(",", table.columns()) + "\r\n");
            }
        }
    }
}
