package warmshelf.testing;

import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;

/** Decides what happens where a test's outside help (browser, PostgreSQL, stations file) is missing. */
public final class Everything {
    private Everything() {}

    /** Skips the test with a clear line where the help is missing; fails it where everything is expected to be there. */
    public static void require(boolean present, String what) {
        if (present) {
            return;
        }
        String line = "skipped: " + what + " is not here";
        if (Boolean.getBoolean("warmshelf.everything")) {
            fail(line + ", and this run expects everything");
        }
        System.out.println(line);
        Assumptions.abort(line);
    }

    /** A file of the reference folder that is kept beside the project and never committed with it. */
    public static Path reference(String file) {
        return Path.of(System.getProperty("warmshelf.reference", "../shared/reference"))
                .resolve(file);
    }
}
