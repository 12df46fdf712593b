package warmshelf;

import java.net.URI;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The settings as options of a command. What no option gives is taken from the environment, then from the defaults. */
public final class SettingsOptions {
    private static final int LARGEST_PORT = 65_535;

    @Option(
            names = "--host",
            paramLabel = "ADDRESS",
            description = "Network address to listen on (WARMSHELF_HOST, default 127.0.0.1: this machine only;"
                    + " 0.0.0.0 lets phones on the local network in).")
    private @Nullable String host;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            description = "Port to listen on (WARMSHELF_PORT, default 7070; 0 takes any free one).")
    private @Nullable String port;

    @Option(
            names = "--base-url",
            paramLabel = "URL",
            description = "Address people type, as behind a reverse proxy, for example https://seeds.example.org"
                    + " (WARMSHELF_BASE_URL, default http://localhost and the port).")
    private @Nullable String baseUrl;

    @Option(
            names = "--data",
            paramLabel = "FOLDER",
            description = "Folder of the group's data (WARMSHELF_DATA, default warmshelf-data).")
    private @Nullable String data;

    @Option(
            names = "--jdbc-url",
            paramLabel = "URL",
            description = "JDBC address of a PostgreSQL database to use instead of a file in the data folder"
                    + " (WARMSHELF_JDBC_URL).")
    private @Nullable String jdbcUrl;

    @Option(names = "--jdbc-user", paramLabel = "NAME", description = "User at that database (WARMSHELF_JDBC_USER).")
    private @Nullable String jdbcUser;

    @Option(
            names = "--jdbc-password",
            paramLabel = "WORD",
            description = "Password at that database. Others on this machine can read a command's options,"
                    + " so prefer the environment (WARMSHELF_JDBC_PASSWORD).")
    private @Nullable String jdbcPassword;

    @Option(
            names = "--trusted-proxies",
            paramLabel = "ADDRESSES",
            description = "Network addresses of reverse proxies in front, separated by commas; their"
                    + " X-Forwarded-For is believed (WARMSHELF_TRUSTED_PROXIES, default none).")
    private @Nullable String trustedProxies;

    @Option(
            names = "--time-zone",
            paramLabel = "ZONE",
            description = "Time zone offered when the group is opened, for example America/Chicago"
                    + " (WARMSHELF_TIME_ZONE, default this machine's).")
    private @Nullable String timeZone;

    /**
     * Reads every setting.
     *
     * @throws BadInput naming the option or variable that cannot be used
     */
    public Settings read(Map<String, String> environment) {
        return new Settings(
                given("--host", host, environment).orDefault("127.0.0.1", this::hostName),
                given("--port", port, environment).orDefault("7070", SettingsOptions::portNumber),
                given("--base-url", baseUrl, environment).orNothing(SettingsOptions::webAddress),
                given("--data", data, environment).orDefault("warmshelf-data", SettingsOptions::folder),
                given("--jdbc-url", jdbcUrl, environment).orNothing(SettingsOptions::jdbcAddress),
                given("--jdbc-user", jdbcUser, environment).orNothing(Given::text),
                given("--jdbc-password", jdbcPassword, environment).orNothing(Given::text),
                given("--trusted-proxies", trustedProxies, environment).orDefault("", SettingsOptions::addresses),
                given("--time-zone", timeZone, environment)
                        .orDefault(ZoneId.systemDefault().getId(), SettingsOptions::zone));
    }

    private static Given given(String option, @Nullable String typed, Map<String, String> environment) {
        String variable = "WARMSHELF_" + option.substring(2).replace('-', '_').toUpperCase(java.util.Locale.ROOT);
        String set = environment.get(variable);
        return typed != null || set == null || set.isBlank()
                ? new Given(option, typed)
                : new Given(variable, set.strip());
    }

    private String hostName(Given given) {
        if (!given.text().matches("[A-Za-z0-9._:%-]{1,255}")) {
            throw given.refused("a network address such as 127.0.0.1 or 0.0.0.0 is accepted");
        }
        return given.text();
    }

    private static int portNumber(Given given) {
        try {
            int number = Integer.parseInt(given.text());
            if (number >= 0 && number <= LARGEST_PORT) {
                return number;
            }
        } catch (NumberFormatException notANumber) {
            throw given.refused("a whole number from 0 to 65535 is accepted");
        }
        throw given.refused("a whole number from 0 to 65535 is accepted");
    }

    private static String webAddress(Given given) {
        String accepted = "an address such as https://seeds.example.org, without a path, is accepted";
        try {
            URI address = URI.create(given.text().replaceAll("/$", ""));
            boolean web = "http".equals(address.getScheme()) || "https".equals(address.getScheme());
            if (web && address.getHost() != null && address.getRawPath().isEmpty() && address.getQuery() == null) {
                return address.toString();
            }
        } catch (IllegalArgumentException notAnAddress) {
            throw given.refused(accepted);
        }
        throw given.refused(accepted);
    }

    private static Path folder(Given given) {
        try {
            return Path.of(given.text());
        } catch (InvalidPathException notAPath) {
            throw given.refused("the path of a folder is accepted");
        }
    }

    private static String jdbcAddress(Given given) {
        if (!given.text().startsWith("jdbc:postgresql:") && !given.text().startsWith("jdbc:h2:")) {
            throw given.refused("an address that starts with jdbc:postgresql: or jdbc:h2: is accepted");
        }
        return given.text();
    }

    private static Set<String> addresses(Given given) {
        return Arrays.stream(given.text().split(","))
                .map(String::strip)
                .filter(address -> !address.isEmpty())
                .collect(Collectors.toUnmodifiableSet());
    }

    private static ZoneId zone(Given given) {
        try {
            return ZoneId.of(given.text());
        } catch (DateTimeException unknown) {
            throw given.refused("a time zone such as America/Chicago is accepted");
        }
    }

    /** What was given for one setting, and by which option or variable. */
    private record Given(String by, @Nullable String typed) {
        String text() {
            return typed == null ? "" : typed;
        }

        <T> T orDefault(String otherwise, Function<Given, T> reading) {
            return reading.apply(typed == null ? new Given(by, otherwise) : this);
        }

        <T> @Nullable T orNothing(Function<Given, T> reading) {
            return typed == null ? null : reading.apply(this);
        }

        BadInput refused(String accepted) {
            return new BadInput("%s was '%s'; %s.".formatted(by, text(), accepted));
        }
    }
}
