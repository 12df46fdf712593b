package warmshelf;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Who signs in to a PostgreSQL database, as options of a command; what no option gives is taken from the environment. */
public final class DatabaseLogin {
    static final String USER = "--jdbc-user";
    static final String PASSWORD = "--jdbc-password";

    @Option(
            names = USER,
            paramLabel = "NAME",
            description = "User at that database (WARMSHELF_JDBC_USER, default none).")
    private @Nullable String user;

    @Option(
            names = PASSWORD,
            paramLabel = "WORD",
            description = "Password at that database. Others on this machine can read a command's options,"
                    + " so prefer the environment (WARMSHELF_JDBC_PASSWORD, default none).")
    private @Nullable String password;

    @Nullable
    String user(Map<String, String> environment) {
        return SettingsOptions.given(USER, user, environment).orNothing(SettingsOptions.Given::text);
    }

    @Nullable
    String password(Map<String, String> environment) {
        return SettingsOptions.given(PASSWORD, password, environment).orNothing(SettingsOptions.Given::text);
    }
}
