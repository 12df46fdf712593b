package warmshelf.jar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What Java notes of a rehearsal makes later starts quicker, and never prevents one. */
class StartArchiveIT {
    @TempDir
    private Path folder;

    @Test
    void classes_noted_at_a_rehearsal_are_taken_from_there_at_the_next_start() throws IOException {
        Path archive = folder.resolve("warmshelf.jsa");
        Path log = folder.resolve("classes.txt");

        JarRun rehearsal = JarRun.by(List.of("-Xlog:cds=off", "-XX:ArchiveClassesAtExit=" + archive), "rehearse");

        assertThat(rehearsal.status()).isZero();
        if (Boolean.getBoolean("warmshelf.classes")) {
            return; // Java notes classes of jars alone
        }
        assertThat(rehearsal.json().get("pages").asInt()).isEqualTo(16);
        answers("-XX:SharedArchiveFile=" + archive, "-Xlog:class+load:file=" + log);
        assertThat(Files.readAllLines(log))
                .filteredOn(line -> line.contains(" warmshelf.Server source: "))
                .singleElement()
                .asString()
                .contains("shared objects file (top)");
    }

    @Test
    void an_archive_that_is_missing_does_no_harm() throws IOException {
        answers("-XX:SharedArchiveFile=" + folder.resolve("warmshelf.jsa"));
    }

    @Test
    void an_archive_that_is_none_does_no_harm() throws IOException {
        answers("-XX:SharedArchiveFile=" + Files.writeString(folder.resolve("warmshelf.jsa"), "no archive"));
    }

    private void answers(String... java) throws IOException {
        Path data = Files.createTempDirectory(folder, "data");
        try (JarServer server = JarServer.startBy(List.of(java), "--data", data.toString())) {
            assertThat(server.browser().get(server.openingPath()).status()).isEqualTo(200);
        }
    }
}
