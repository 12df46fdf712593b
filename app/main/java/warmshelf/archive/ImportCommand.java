package warmshelf.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import warmshelf.DatabaseOptions;
import warmshelf.Output;

/** {@code import}: takes a group in from the file that export wrote. */
@Command(
        name = "import",
        description = "Take a group in from the file that 'export' or the page Everything in one file made, where no"
                + " group lives yet. Stop the server first. All is checked before anything is written, and what is"
                + " refused changes nothing.",
        footerHeading = "%n",
        footer = {
            "Prints group, members, lots, sowings, entries, stays, photos and the file's sha256.",
            "The same people sign in with the same passphrases. Sign-ins, links that let somebody in, and devices for"
                    + " notices do not travel; make or add them anew."
        },
        mixinStandardHelpOptions = true)
public final class ImportCommand implements Callable<Integer> {
    @Mixin
    private DatabaseOptions options;

    @Parameters(index = "0", paramLabel = "FILE", description = "The zip.")
    private Path file;

    @Override
    public Integer call() throws IOException {
        Output.json(ArchiveAnswer.of(IntakeStore.takeIn(file, options.read(System.getenv()), Clock.systemUTC())));
        return 0;
    }
}
