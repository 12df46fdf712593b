package warmshelf.archive;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.testing.CommandRun;
import warmshelf.testing.MutableClock;
import warmshelf.testing.TestGroup;

class ArchiveCommandsTest {
    @TempDir
    private Path folder;

    private String path(String name) {
        return folder.resolve(name).toString();
    }

    @Test
    void a_group_goes_out_and_in_and_moves_on_by_commands() throws IOException {
        try (TestGroup group = TestGroup.open()) {
            Archives.export(group.database(), new MutableClock(TestGroup.MORNING), folder.resolve("group.zip"));
        }

        CommandRun in = CommandRun.of("import", path("group.zip"), "--data", path("data"));
        CommandRun out = CommandRun.of("export", "--data", path("data"), "--out", path("again.zip"));
        CommandRun moved = CommandRun.of("move", "--from", path("data"), "--to", path("moved"));

        assertThat(in.status()).as(in.err()).isZero();
        assertThat(in.json().get("group").asText()).isEqualTo(TestGroup.NAME);
        for (JsonNode answer : new JsonNode[] {in.json(), out.json()}) {
            assertThat(answer.fieldNames())
                    .toIterable()
                    .contains("members", "lots", "sowings", "entries", "stays", "photos", "sha256");
            assertThat(answer.get("members").asInt()).isEqualTo(3);
        }
        assertThat(out.json().get("bytes").asLong()).isEqualTo(Files.size(folder.resolve("again.zip")));
        assertThat(moved.json().at("/tables/member/rows").asInt()).isEqualTo(3);
        assertThat(moved.json().at("/tables/archive_file/rows").asInt()).isEqualTo(2);
        assertThat(moved.json().at("/tables/member/sha256").asText()).matches("[0-9a-f]{64}");
    }

    @Test
    void what_cannot_be_used_is_said_in_a_sentence() throws IOException {
        Path there = Files.writeString(folder.resolve("there.zip"), "no zip");
        Files.createDirectories(folder.resolve("data"));

        assertRefused("is no zip or was cut short", "import", there.toString(), "--data", path("data"));
        assertRefused("Either --data with a folder or --jdbc-url", "import", there.toString());
        assertRefused("Either --data with a folder", "export", "--out", path("a.zip"));
        assertRefused("There is a file", "export", "--data", path("data"), "--out", there.toString());
        assertRefused("No group lives there yet", "export", "--data", path("data"), "--out", path("a.zip"));
        assertRefused("No group lives there yet", "move", "--from", path("data"), "--to", path("b"));
        assertRefused("starts with jdbc:postgresql:", "move", "--from", "jdbc:mysql://x", "--to", path("b"));
        assertThat(folder.resolve("a.zip")).doesNotExist();
        assertThat(folder.resolve("data")).isEmptyDirectory();
    }

    private static void assertRefused(String sentence, String... words) {
        CommandRun run = CommandRun.of(words);
        assertThat(run.status()).as(String.join(" ", words)).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).hasLineCount(1).contains(sentence);
    }
}
