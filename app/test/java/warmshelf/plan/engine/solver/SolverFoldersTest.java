package warmshelf.plan.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SolverFoldersTest {
    @TempDir
    Path temporary;

    @Test
    void folders_left_by_a_killed_process_go_after_a_day_and_nothing_else_does() throws Exception {
        Path left = folder("warmshelf-solver123", Duration.ofHours(25));
        Path inUse = folder("warmshelf-solver456", Duration.ofHours(23));
        Path ofOthers = folder("other-solver", Duration.ofHours(25));

        Path made = SolverFolders.create(temporary);

        assertThat(left).doesNotExist();
        assertThat(inUse).isDirectory();
        assertThat(ofOthers).isDirectory();
        assertThat(made).isEmptyDirectory().hasParent(temporary);
    }

    private Path folder(String name, Duration old) throws IOException {
        Path folder = Files.createDirectory(temporary.resolve(name));
        Files.writeString(folder.resolve("library.so"), "native");
        FileTime now = Files.getLastModifiedTime(folder);
        Files.setLastModifiedTime(folder, FileTime.from(now.toInstant().minus(old)));
        return folder;
    }
}
