package warmshelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** Folders that hold less than they held before: by a copy that was interrupted, or an older file put back. */
class CutDataTest {
    private static final Audit AUDIT = new Audit(Clock.systemUTC());

    @TempDir
    private Path folder;

    private Path data;

    @BeforeEach
    void live() throws IOException {
        data = folder.resolve("warmshelf.mv.db");
        change(300);
        Files.copy(data, folder.resolve("older"));
        change(300);
    }

    @Test
    void whole_data_open_again_and_again() {
        change(1);
        change(1);

        try (Database database = open()) {
            assertThat(database.sql()
                            .fetchSingle("select count(*) from audit_line")
                            .get(0, Long.class))
                    .isEqualTo(602);
        }
    }

    @Test
    void an_older_file_put_in_its_place_is_refused_with_the_way_back() throws IOException {
        Files.copy(folder.resolve("older"), data, StandardCopyOption.REPLACE_EXISTING);

        assertThatThrownBy(this::open)
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("go as far as 300 changes, but 600 were known here")
                .hasMessageContaining("delete the file 'warmshelf.mark'");

        Files.delete(folder.resolve("warmshelf.mark"));
        try (Database database = open()) {
            assertThat(database.answers()).isTrue();
        }
    }

    @Test
    void a_file_cut_short_never_opens_as_an_empty_group() throws IOException {
        byte[] whole = Files.readAllBytes(data);
        for (double part : new double[] {0.999, 0.9, 0.5, 0.1, 0}) {
            try (FileChannel channel =
                    FileChannel.open(data, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
                channel.write(ByteBuffer.wrap(whole, 0, (int) (whole.length * part)));
            }
            assertThatThrownBy(this::open)
                    .as("%s of the file", part)
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("whole copy of the folder there");
        }
    }

    @Test
    void a_file_that_is_missing_where_a_group_was_is_refused() throws IOException {
        Files.delete(data);

        assertThatThrownBy(this::open).isInstanceOf(BadInput.class).hasMessageContaining("go as far as 0 changes");
    }

    @Test
    void a_damaged_mark_keeps_nobody_out() throws IOException {
        Files.writeString(folder.resolve("warmshelf.mark"), "7\n\nnonsense\n");

        try (Database database = open()) {
            assertThat(database.answers()).isTrue();
        }
    }

    @Test
    void a_folder_that_nobody_may_write_to_is_refused_at_the_start() {
        // part of the kernel's own files: not even the administrator writes there
        assertThatThrownBy(() -> DatabasePlace.inFolder("--data", Path.of("/proc/self/fdinfo"))
                        .open())
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("can only be read");
    }

    private Database open() {
        return DatabasePlace.inFolder("--data", folder).open();
    }

    private void change(int times) {
        try (Database database = open()) {
            database.sql().transaction(inside -> {
                for (int i = 0; i < times; i++) {
                    AUDIT.write(inside.dsl(), null, "test", "thing", i, "");
                }
            });
        }
    }
}
