package warmshelf.archive;

import static warmshelf.archive.ArchiveSentences.SAY;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import warmshelf.BadInput;
import warmshelf.DatabaseOptions;
import warmshelf.DatabasePlace;
import warmshelf.Output;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** {@code export}: writes the whole group into one file. */
@Command(
        name = "export",
        description = "Write the whole group into one file: every table, the photos and what each column means."
                + " With --data, stop the server first; or download the file from the page Everything in one file.",
        footerHeading = "%n",
        footer = {
            "Prints members, lots, sowings, entries, stays, photos, bytes and the file's sha256.",
            "The file holds names, postcodes, addresses, photos and hashes of passphrases: keep it locked away."
        },
        mixinStandardHelpOptions = true)
public final class ExportCommand implements Callable<Integer> {
    @Mixin
    private DatabaseOptions options;

    @Option(names = "--out", paramLabel = "FILE", required = true, description = "The zip to write, not there yet.")
    private Path out;

    @Override
    public Integer call() throws IOException {
        DatabasePlace place = options.read(System.getenv());
        if (Files.exists(out)) {
            throw new BadInput(SAY.outExists(out.toString()));
        }
        if (place.look().group() == null) {
            throw new BadInput(SAY.noGroup());
        }
        try (Database database = place.open()) {
            Output.json(ArchiveAnswer.of(write(new ArchiveStore(database, new Audit(Clock.systemUTC())))));
        }
        return 0;
    }

    /** Under another name until it is whole; where the system can, nobody else may read it. */
    private ArchiveMade write(ArchiveStore store) throws IOException {
        String group = store.group().orElseThrow(() -> new BadInput(SAY.noGroup()));
        Path part = part();
        try {
            ArchiveMade made;
            try (OutputStream written = Files.newOutputStream(part)) {
                made = store.make(group, written, null);
            }
            Files.move(part, out);
            return made;
        } catch (FileAlreadyExistsException cameMeanwhile) {
            throw new BadInput(SAY.outExists(out.toString()));
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private Path part() {
        try {
            return Files.createTempFile(out.toAbsolutePath().getParent(), "warmshelf-", ".part");
        } catch (IOException unwritable) {
            throw new BadInput(SAY.outUnwritable(out.toString()));
        }
    }
}
