package warmshelf.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.seed.LotStore;
import warmshelf.seed.NewLot;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;
import warmshelf.testing.Upload;

class PacketPhotoPagesTest {
    private TestGroup group;
    private Browser owner;
    private UUID lot;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        owner = group.signedIn(group.member());
        UUID tom = group.member().id();
        lot = new LotStore(group.database(), group.audit())
                .add(new NewLot("pepper", "Harbour Light", 2025, 40, tom, false, ""), tom);
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void a_photo_of_the_packet_stands_on_its_lots_page_until_it_is_taken_out() {
        assertThat(owner.get("/packets/new?lot=" + lot).body()).contains("enctype=\"multipart/form-data\"");

        Answer added = upload(Pictures.asFromCamera(Pictures.jpeg(900, 600), 1)).post(owner, "/packets");

        assertThat(added.location()).isEqualTo("/seeds/" + lot);
        String photo = Cellar.first(page(), "<img src=\"(/packets/[0-9a-f-]{36})\" width=\"900\" height=\"600\"");
        assertThat(owner.get(photo).header("Content-Type")).startsWith("image/jpeg");
        assertThat(group.stranger().get(photo).location()).startsWith("/sign-in");

        assertThat(owner.post(photo + "/removal", Map.of()).location()).isEqualTo("/seeds/" + lot);
        assertThat(page()).doesNotContain("<img src=\"/packets");
        assertThat(owner.get(photo).status()).isEqualTo(404);
    }

    @Test
    void what_is_no_photo_and_a_third_one_are_refused_with_a_sentence() {
        Answer none = new Upload().field("lot", lot.toString()).post(owner, "/packets");
        Answer text = upload("peppers".getBytes(java.nio.charset.StandardCharsets.UTF_8))
                .post(owner, "/packets");
        upload(Pictures.jpeg(9, 9)).post(owner, "/packets");
        upload(Pictures.jpeg(9, 9)).post(owner, "/packets");
        Answer third = upload(Pictures.jpeg(9, 9)).post(owner, "/packets");

        assertThat(none.status()).isEqualTo(422);
        assertThat(none.body()).contains("The photo is missing; a JPEG or PNG picture is accepted.");
        assertThat(text.body()).contains("The photo could not be read; a whole JPEG or PNG picture is accepted");
        assertThat(third.status()).isEqualTo(422);
        assertThat(third.body()).contains("There are 2 photos of this packet already; take one out first.");
        assertThat(owner.get("/packets/new?lot=none").status()).isEqualTo(404);
        assertThat(owner.get("/packets/" + UUID.randomUUID()).status()).isEqualTo(404);
    }

    @Test
    void only_the_owner_or_a_coordinator_adds_and_takes_out() {
        Browser other = group.signedIn(group.onDuty());
        assertThat(upload(Pictures.jpeg(9, 9)).post(other, "/packets").status()).isEqualTo(403);

        upload(Pictures.jpeg(9, 9)).post(owner, "/packets");
        String removal = Cellar.first(page(), "(/packets/[0-9a-f-]{36}/removal)");

        assertThat(other.post(removal, Map.of()).status()).isEqualTo(403);
        assertThat(group.signedIn(group.coordinator()).post(removal, Map.of()).status())
                .isEqualTo(303);
    }

    private String page() {
        return owner.get("/seeds/" + lot).body();
    }

    private Upload upload(byte[] file) {
        return new Upload().field("lot", lot.toString()).file("a.jpg", file);
    }
}
