package warmshelf.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.ARCHIVE_FILE;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.PHOTO;
import static warmshelf.db.generated.Tables.SOWING;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.DatabasePlace;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.GrowRoom;
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

        assertThat(ilse.get("/archive").text()).contains("Last made on 1 Mar 2027 by Ilse: 0.1 MB.");
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

    /** One is made at a time; whoever comes meanwhile is asked to come again. */
    @Test
    void two_downloads_at_once_leave_nothing_behind_and_each_is_whole_or_says_why_not() throws Exception {
        addPhotos();
        var client = HttpClient.newHttpClient();
        var request = ilse.request("/archive/everything.zip").GET().build();
        var both = List.of(
                client.sendAsync(request, HttpResponse.BodyHandlers.ofByteArray()),
                client.sendAsync(request, HttpResponse.BodyHandlers.ofByteArray()));

        int whole = 0;
        for (var each : both) {
            HttpResponse<byte[]> answer = each.get(60, TimeUnit.SECONDS);
            assertThat(answer.statusCode()).isIn(200, 503);
            if (answer.statusCode() == 200) {
                whole++;
                assertThat(answer.headers().firstValueAsLong("Content-Length")).hasValue(answer.body().length);
            } else {
                assertThat(answer.headers().firstValue("Retry-After")).isPresent();
            }
        }
        assertThat(whole).isPositive();
        nothingIsLeft();
        assertThat(group.database().sql().fetchCount(ARCHIVE_FILE)).isEqualTo(whole);
        assertThat(download().statusCode()).isEqualTo(200);
    }

    @Test
    void a_download_that_is_broken_off_leaves_nothing_behind() throws Exception {
        addPhotos();
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), group.port())) {
            // the end comes as a reset, as from a phone that lost its signal
            socket.setSoLinger(true, 0);
            socket.getOutputStream()
                    .write(("GET /archive/everything.zip HTTP/1.1\r\nHost: 127.0.0.1\r\nCookie: warmshelf="
                                    + ilse.cookie("warmshelf") + "\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            assertThat(new String(socket.getInputStream().readNBytes(15), StandardCharsets.US_ASCII))
                    .isEqualTo("HTTP/1.1 200 OK");
        }
        nothingIsLeft();
        assertThat(download().statusCode()).isEqualTo(200);
    }

    /** More than a connection holds on its way. */
    private void addPhotos() {
        GrowRoom room = GrowRoom.of(group);
        UUID lot = lotOf(room.tomsPeppers());
        for (int i = 0; i < 40; i++) {
            byte[] jpeg = new byte[300_000];
            jpeg[0] = (byte) 0xff;
            jpeg[1] = (byte) 0xd8;
            jpeg[2] = (byte) 0xff;
            group.database()
                    .sql()
                    .insertInto(PHOTO)
                    .set(PHOTO.ID, UUID.randomUUID())
                    .set(PHOTO.LOT_ID, lot)
                    .set(PHOTO.WIDTH, 2)
                    .set(PHOTO.HEIGHT, 1)
                    .set(PHOTO.JPEG, jpeg)
                    .set(PHOTO.ADDED_BY, group.member().id())
                    .set(PHOTO.ADDED_AT, group.audit().now())
                    .execute();
        }
    }

    private UUID lotOf(UUID sowing) {
        return group.database()
                .sql()
                .select(SOWING.LOT_ID)
                .from(SOWING)
                .where(SOWING.ID.eq(sowing))
                .fetchSingle(SOWING.LOT_ID);
    }

    /** Waits until the server has put away what it wrote beside; it does when the connection is over. */
    private static void nothingIsLeft() throws IOException {
        long until = System.nanoTime() + Duration.ofSeconds(30).toNanos();
        while (!filesBeside().isEmpty()) {
            assertThat(System.nanoTime()).as("a moment before patience ends").isLessThan(until);
            LockSupport.parkNanos(20_000_000);
        }
    }

    private static List<Path> filesBeside() throws IOException {
        String ours = "warmshelf-uploads-" + ProcessHandle.current().pid() + "-";
        try (Stream<Path> files = Files.find(
                Path.of(System.getProperty("java.io.tmpdir")),
                3,
                (path, about) ->
                        path.endsWith("everything.zip") && path.toString().contains(ours))) {
            return files.toList();
        }
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
