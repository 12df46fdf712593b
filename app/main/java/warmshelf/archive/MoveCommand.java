package warmshelf.archive;

import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import warmshelf.DatabaseOptions;
import warmshelf.Output;

/** {@code move}: moves a group with all that belongs to its installation from one database to another. */
@Command(
        name = "move",
        description = "Move a group from a data folder into PostgreSQL, or back, or to another folder. Stop the server"
                + " first. Where it is to go no group may live yet; where it was, it stays as it is.",
        footerHeading = "%n",
        footer = {
            "Prints tables, each with rows and the sha256 of its rows, which was the same on both sides.",
            "Users and passwords of databases stand in the addresses, or in WARMSHELF_JDBC_USER and WARMSHELF_JDBC_PASSWORD."
        },
        mixinStandardHelpOptions = true)
public final class MoveCommand implements Callable<Integer> {
    @Option(
            names = "--from",
            paramLabel = "FOLDER|URL",
            required = true,
            description = "The group's data folder, or the JDBC address of its database.")
    private String from;

    @Option(
            names = "--to",
            paramLabel = "FOLDER|URL",
            required = true,
            description = "The folder or database where it is to live.")
    private String to;

    @Override
    public Integer call() {
        Map<String, String> environment = System.getenv();
        Output.json(Map.of(
                "tables",
                GroupMoveStore.move(
                        DatabaseOptions.named("--from", from, environment),
                        DatabaseOptions.named("--to", to, environment))));
        return 0;
    }
}
