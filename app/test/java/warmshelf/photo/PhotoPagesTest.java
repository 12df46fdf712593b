package warmshelf.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.Upload;

class PhotoPagesTest {
    private Cellar cellar;
    private String sowing;
    private String entry;

    @BeforeEach
    void open() {
        cellar = Cellar.open();
        sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        cellar.tick(sowing, Map.of("step", "sown"));
        entry = Cellar.first(page(), "/photos/new\\?entry=([0-9a-f-]{36})");
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void a_photo_added_on_its_page_is_shown_with_what_was_seen() {
        Browser member = cellar.member();
        assertThat(member.get("/photos/new?entry=" + entry).body()).contains("enctype=\"multipart/form-data\"");

        Answer added = upload("IMG 1.jpg", Pictures.asFromCamera(Pictures.jpeg(900, 600), 1))
                .post(member, "/photos");

        assertThat(added.location()).isEqualTo("/sowings/" + sowing);
        String photo = Cellar.first(page(), "<img src=\"(/photos/[0-9a-f-]{36})\" width=\"900\" height=\"600\"");
        Answer shown = member.get(photo);
        assertThat(shown.status()).isEqualTo(200);
        assertThat(shown.header("Content-Type")).startsWith("image/jpeg");
        assertThat(shown.header("X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(shown.header("Cache-Control")).startsWith("private");
        assertThat(cellar.group().stranger().get(photo).location()).startsWith("/sign-in");
    }

    @Test
    void what_is_no_photo_is_refused_with_a_sentence_and_nothing_is_kept() {
        Browser member = cellar.member();

        Answer text = upload("list.jpg", "peppers, tomatoes".getBytes(StandardCharsets.UTF_8))
                .post(member, "/photos");
        Answer none = new Upload().field("entry", entry).post(member, "/photos");

        assertThat(text.status()).isEqualTo(422);
        assertThat(text.body()).contains("The photo could not be read; a whole JPEG or PNG picture is accepted");
        assertThat(none.status()).isEqualTo(422);
        assertThat(none.body()).contains("The photo is missing; a JPEG or PNG picture is accepted.");
        assertThat(page()).doesNotContain("<img src=\"/photos");
        assertThat(upload("a.jpg", Pictures.jpeg(9, 9))
                        .postWithoutToken(member, "/photos")
                        .status())
                .isEqualTo(403);
        assertThat(member.get("/photos/new?entry=none").status()).isEqualTo(404);
        assertThat(member.get("/photos/" + UUID.randomUUID()).status()).isEqualTo(404);
    }

    @Test
    void a_fourth_photo_at_an_entry_is_one_too_many() {
        for (int number = 1; number <= 3; number++) {
            upload("a.jpg", Pictures.jpeg(30, 30)).post(cellar.member(), "/photos");
        }

        Answer fourth = upload("a.jpg", Pictures.jpeg(30, 30)).post(cellar.member(), "/photos");

        assertThat(fourth.status()).isEqualTo(422);
        assertThat(fourth.body()).contains("There are 3 photos with this entry already; take one out first.");
    }

    @Test
    void only_who_added_it_the_grower_or_a_coordinator_takes_it_out() {
        Browser onDuty = cellar.group().signedIn(cellar.group().onDuty());
        upload("a.jpg", Pictures.jpeg(30, 30)).post(cellar.member(), "/photos");
        String removal = Cellar.first(page(), "(/photos/[0-9a-f-]{36}/removal)");
        assertThat(onDuty.get("/sowings/" + sowing).body()).doesNotContain("/removal");

        assertThat(onDuty.post(removal, Map.of()).status()).isEqualTo(403);
        assertThat(page()).contains(removal);
        assertThat(cellar.coordinator().post(removal, Map.of()).location()).isEqualTo("/sowings/" + sowing);

        assertThat(page()).doesNotContain("<img src=\"/photos");
        assertThat(cellar.member().post(removal, Map.of()).status()).isEqualTo(404);
    }

    @Test
    void one_that_waited_on_a_phone_is_kept_once_however_often_it_is_sent() {
        UUID id = UUID.randomUUID();
        byte[] camera = Pictures.asFromCamera(Pictures.jpeg(60, 40), 1);

        assertThat(send(json(id, entry, camera)).body()).isEqualTo("{\"kept\":true}");
        assertThat(send(json(id, entry, camera)).status()).isEqualTo(200);

        assertThat(Cellar.all(page(), "<img src=\"/photos/([0-9a-f-]{36})\"")).containsExactly(id.toString());
    }

    @Test
    void what_can_never_be_kept_from_a_phone_is_said_in_a_sentence() {
        UUID id = UUID.randomUUID();
        byte[] text = "peppers".getBytes(StandardCharsets.UTF_8);

        Answer noPicture = send(json(id, entry, text));
        Answer noEntry = send(json(id, UUID.randomUUID().toString(), Pictures.jpeg(9, 9)));
        Answer malformed = send("{\"id\":\"7\"}");
        Answer otherMember = send("{\"id\":\"%s\",\"entry\":\"%s\",\"member\":\"%s\",\"jpeg\":\"\"}"
                .formatted(id, entry, UUID.randomUUID()));

        assertThat(noPicture.status()).isEqualTo(422);
        assertThat(noPicture.body()).contains("The photo could not be read");
        assertThat(noEntry.status()).isEqualTo(422);
        assertThat(noEntry.body()).contains("There is no such entry at a sowing.");
        assertThat(malformed.status()).isEqualTo(400);
        assertThat(malformed.body()).contains("What was sent is no photo with 'id', 'entry' and 'jpeg'.");
        assertThat(otherMember.status()).isEqualTo(409);
        assertThat(otherMember.body()).isEqualTo("{\"otherMember\":true}");
    }

    private static String json(UUID id, String entry, byte[] file) {
        return "{\"id\":\"%s\",\"entry\":\"%s\",\"member\":\"\",\"jpeg\":\"%s\"}"
                .formatted(id, entry, Base64.getEncoder().encodeToString(file));
    }

    private Answer send(String json) {
        Browser member = cellar.member();
        return member.send(member.request("/round/photos")
                .header("Content-Type", "application/json")
                .header("Accept", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(json)));
    }

    private Upload upload(String name, byte[] content) {
        return new Upload()
                .field("entry", entry)
                .field("id", UUID.randomUUID().toString())
                .file(name, content);
    }

    private String page() {
        return cellar.member().get("/sowings/" + sowing).body();
    }
}
