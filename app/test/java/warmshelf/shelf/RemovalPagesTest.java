package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;

class RemovalPagesTest {
    private Cellar cellar;
    private Site site;
    private Rack rack;

    @BeforeEach
    void open() {
        cellar = Cellar.open();
        site = shelving().all().get(0);
        rack = site.racks().get(0);
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void an_unused_rack_is_deleted_after_asking() {
        String address = "/sites/racks/" + rack.id() + "/deletion";
        assertThat(cellar.coordinator()
                        .get("/sites/racks/" + rack.id() + "/change")
                        .body())
                .contains(address);
        assertThat(cellar.coordinator().get(address).text()).contains("Nothing ever lay there");

        Answer answer = cellar.coordinator().post(address);

        assertThat(answer.location()).isEqualTo("/sites");
        assertThat(cellar.coordinator().get("/sites").text()).contains("is deleted.");
        assertThat(shelving().rack(rack.id())).isEmpty();
        assertThat(cellar.coordinator().post(address).status()).isEqualTo(404);
    }

    @Test
    void a_shelf_with_a_tray_on_it_is_kept_with_a_sentence_and_the_page_offers_nothing_else() {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        UUID shelf = rack.shelves().get(0).id();
        for (String address : List.of(
                "/sites/racks/" + rack.id() + "/deletion",
                "/sites/shelves/" + shelf + "/deletion",
                "/sites/mats/" + rack.shelves().get(0).mats().get(0).id() + "/deletion")) {
            assertThat(cellar.coordinator().get(address).body())
                    .as(address)
                    .contains("Move it first")
                    .doesNotContain("Delete it</button>");
            Answer answer = cellar.coordinator().post(address);

            assertThat(answer.status()).as(address).isEqualTo(409);
            assertThat(answer.text()).contains("Move it first");
        }
        assertThat(shelving().rack(rack.id())).isPresent();
        assertThat(shelving().shelf(shelf)).isPresent();
    }

    @Test
    void members_delete_nothing() {
        assertThat(cellar.member().post("/sites/" + site.id() + "/deletion").status())
                .isEqualTo(403);
    }

    @Test
    void a_rack_moves_to_another_site_with_all_that_stands_on_it() {
        cellar.coordinator()
                .post("/sites", Map.of("name", "Barn", "walkOrder", "2", "amps", "15", "volts", "120", "note", ""));
        Site barn = shelving().all().get(1);
        Map<String, String> fields = new HashMap<>(Map.of("name", "Moved", "walkOrder", "1", "version", "1"));
        fields.put("site", "nowhere");
        String address = "/sites/racks/" + rack.id() + "/change";

        assertThat(cellar.coordinator().post(address, fields).text()).contains("Site was 'nowhere'");
        fields.put("site", barn.id().toString());
        assertThat(cellar.coordinator().post(address, fields).location()).isEqualTo("/sites");

        Rack moved = shelving().rack(rack.id()).orElseThrow();
        assertThat(moved.siteId()).isEqualTo(barn.id());
        assertThat(moved.shelves()).isEqualTo(rack.shelves());
    }

    @Test
    void another_rack_like_one_begins_with_its_shelves_and_mats() {
        String page = cellar.coordinator().get("/sites").body();
        assertThat(page).contains("/sites/" + site.id() + "/racks/new?like=" + rack.id());

        String form = cellar.coordinator()
                .get("/sites/" + site.id() + "/racks/new?like=" + rack.id())
                .body();

        for (Shelf shelf : rack.shelves()) {
            String kind = ShelfContent.of(shelf).word();
            assertThat(form).contains("<option value=\"" + kind + "\" selected>");
        }
    }

    private ShelvingStore shelving() {
        return new ShelvingStore(cellar.group().database().sql());
    }
}
