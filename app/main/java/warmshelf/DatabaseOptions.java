package warmshelf;

import java.nio.file.Path;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which group's database a command is about. It is named on the command line, so that nothing happens to another by mistake. */
public final class DatabaseOptions {
    @Option(names = "--data", paramLabel = "FOLDER", description = "The group's data folder.")
    private @Nullable Path data;

    @Option(
            names = "--jdbc-url",
            paramLabel = "URL",
            description = "JDBC address of the group's PostgreSQL database, instead of --data.")
    private @Nullable String jdbcUrl;

    @Mixin
    private DatabaseLogin login = new DatabaseLogin();

    /**
     * The one database that was named.
     *
     * @throws BadInput when none was, or two, or by an address that is none
     */
    public DatabasePlace read(Map<String, String> environment) {
        if ((data == null) == (jdbcUrl == null)) {
            throw new BadInput("Either --data with a folder or --jdbc-url with an address is accepted.");
        }
        if (data != null) {
            return DatabasePlace.inFolder("--data", data);
        }
        return DatabasePlace.at(
                "--jdbc-url",
                SettingsOptions.jdbcAddress(new SettingsOptions.Given("--jdbc-url", jdbcUrl)),
                login.user(environment),
                login.password(environment));
    }

    /**
     * The place that one word names, a folder or a JDBC address.
     *
     * @param option by which it was given
     */
    public static DatabasePlace named(String option, String word, Map<String, String> environment) {
        if (!word.startsWith("jdbc:")) {
            return DatabasePlace.inFolder(option, SettingsOptions.folder(new SettingsOptions.Given(option, word)));
        }
        return DatabasePlace.at(
                option,
                SettingsOptions.jdbcAddress(new SettingsOptions.Given(option, word)),
                new DatabaseLogin().user(environment),
                new DatabaseLogin().password(environment));
    }
}
