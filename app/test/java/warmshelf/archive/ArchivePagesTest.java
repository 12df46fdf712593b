package warmshelf.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.ARCHIVE_FILE;
import static warmshelf.db.generated.Tables.AUDIT_LINE;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.DatabasePlace;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class ArchivePagesTest {
    @TempDir
    private Path folder;

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

    private HttpResponse<byte[]> download() throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(ilse.request("/archive/everything.zip").GET().build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    @Test
    void one_press_downloads_a_file_that_another_installation_takes_in() throws IOException, InterruptedException {
        HttpResponse<byte[]> file = download();

        assertThat(file.statusCode()).isEqualTo(200);
        assertThat(file.headers().firstValue("Content-Type"))
                .hasValueSatisfying(type -> assertThat(type).startsWith("application/zip"));
        assertThat(file.headers().firstValue("Content-Disposition"))
                .hasValue("attachment; filename=\"warmshelf-chester-bowl-seed-starters-2027-03-01.zip\"");
        assertThat(file.headers().firstValueAsLong("Content-Length")).hasValue(file.body().length);
        TakenIn taken = IntakeStore.takeIn(
                Files.write(folder.resolve("group.zip"), file.body()),
                DatabasePlace.inFolder("--data", folder.resolve("data")),
                group.clock());
        assertThat(taken.group()).isEqualTo(TestGroup.NAME);
        assertThat(taken.sha256())
                .isEqualTo(group.database().sql().fetchSingle(ARCHIVE_FILE).getSha256());
    }

    @Test
    void who_made_it_when_and_how_large_it_was_stands_on_the_page_and_in_the_records()
            throws IOException, InterruptedException {
        assertThat(ilse.get("/archive").text()).contains("Not made here yet.");

        download();

        assertThat(ilse.get("/archive").text())
                .contains("Last made on 1 Mar 2027 by " + group.coordinator().name() + ": 0.1 MB.");
        assertThat(group.database().sql().fetch(AUDIT_LINE, AUDIT_LINE.ACTION.eq("make archive")))
                .singleElement()
                .satisfies(line -> assertThat(line.getMemberId())
                        .isEqualTo(group.coordinator().id()));
    }

    @Test
    void the_page_says_that_it_holds_personal_data_and_how_it_is_taken_in() {
        Answer page = ilse.get("/archive");

        assertThat(page.text())
                .contains("personal data of everybody", "hashes of everybody’s passphrases", "Keep it locked away")
                .contains("import FILE --data FOLDER", "No page can do it");
        assertThat(page.body()).doesNotContain("type=\"file\"");
        assertThat(ilse.get("/settings/group").body()).contains("href=\"/archive\"");
    }

    @Test
    void a_member_and_a_stranger_get_neither() {
        Browser member = group.signedIn(group.member());

        for (String path : new String[] {"/archive", "/archive/everything.zip"}) {
            assertThat(member.get(path).status()).as(path).isEqualTo(403);
            assertThat(group.stranger().get(path).status()).as(path).isEqualTo(303);
        }
        assertThat(group.database().sql().fetchCount(ARCHIVE_FILE)).isZero();
    }

    @Test
    void asking_for_its_head_makes_none() throws IOException, InterruptedException {
        HttpResponse<Void> head = HttpClient.newHttpClient()
                .send(
                        ilse.request("/archive/everything.zip")
                                .method("HEAD", java.net.http.HttpRequest.BodyPublishers.noBody())
                                .build(),
                        HttpResponse.BodyHandlers.discarding());

        assertThat(head.statusCode()).isEqualTo(200);
        assertThat(group.database().sql().fetchCount(ARCHIVE_FILE)).isZero();
    }
}
