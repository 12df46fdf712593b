package warmshelf;

import java.net.URI;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import warmshelf.reminder.MailServer;
import warmshelf.web.TrustedProxies;

/** The settings as options of a command. What no option gives is taken from the environment, then from the defaults. */
public final class SettingsOptions {
    private static final int LARGEST_PORT = 65_535;
    private static final String HOST = "127.0.0.1";
    private static final String PORT = "7070";
    private static final String DATA = "warmshelf-data";
    private static final String MAIL_PORT = "587";
    private static final String MAIL_SECURITY = "starttls";

    @Option(
            names = "--host",
            paramLabel = "ADDRESS",
            description = "Network address to listen on (WARMSHELF_HOST, default " + HOST + ": this machine only;"
                    + " 0.0.0.0 lets phones on the local network in).")
    private @Nullable String host;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            description = "Port to listen on (WARMSHELF_PORT, default " + PORT + "; 0 takes any free one).")
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
            description = "Folder of the group's data (WARMSHELF_DATA, default " + DATA + ").")
    private @Nullable String data;

    @Option(
            names = "--jdbc-url",
            paramLabel = "URL",
            description = "JDBC address of a PostgreSQL database to use instead of a file in the data folder, such as"
                    + " jdbc:postgresql://127.0.0.1/warmshelf (WARMSHELF_JDBC_URL, default none).")
    private @Nullable String jdbcUrl;

    @Mixin
    private DatabaseLogin login = new DatabaseLogin();

    @Option(
            names = "--trusted-proxies",
            paramLabel = "ADDRESSES",
            description = "Network addresses of reverse proxies in front, or networks such as 10.0.0.0/8, separated by"
                    + " commas; their X-Forwarded-For is believed (WARMSHELF_TRUSTED_PROXIES, default none).")
    private @Nullable String trustedProxies;

    @Option(
            names = "--time-zone",
            paramLabel = "ZONE",
            description = "Time zone offered when the group is opened, for example America/Chicago"
                    + " (WARMSHELF_TIME_ZONE, default this machine's).")
    private @Nullable String timeZone;

    @Option(
            names = "--mail-host",
            paramLabel = "NAME",
            description = "Mail server (SMTP) that takes reminders (WARMSHELF_MAIL_HOST, default none: no letters).")
    private @Nullable String mailHost;

    @Option(
            names = "--mail-port",
            paramLabel = "PORT",
            description = "Its port (WARMSHELF_MAIL_PORT, default " + MAIL_PORT + ").")
    private @Nullable String mailPort;

    @Option(
            names = "--mail-security",
            paramLabel = "KIND",
            description = "starttls, tls or none (WARMSHELF_MAIL_SECURITY, default " + MAIL_SECURITY
                    + "; none only for a server on" + " this machine).")
    private @Nullable String mailSecurity;

    @Option(names = "--mail-user", paramLabel = "NAME", description = "User there (WARMSHELF_MAIL_USER, default none).")
    private @Nullable String mailUser;

    @Option(
            names = "--mail-password",
            paramLabel = "WORD",
            description = "Password there; prefer the environment (WARMSHELF_MAIL_PASSWORD, default none).")
    private @Nullable String mailPassword;

    @Option(
            names = "--mail-from",
            paramLabel = "ADDRESS",
            description =
                    "Address that letters come from; needed with --mail-host (WARMSHELF_MAIL_FROM, default none).")
    private @Nullable String mailFrom;

    @Mixin
    private PushOptions push = new PushOptions();

    @Mixin
    private UpkeepOptions upkeep = new UpkeepOptions();

    /**
     * Reads every setting.
     *
     * @throws BadInput naming the option or variable that cannot be used
     */
    public Settings read(Map<String, String> environment) {
        return new Settings(
                given("--host", host, environment).orDefault(HOST, this::hostName),
                given("--port", port, environment).orDefault(PORT, SettingsOptions::portNumber),
                given("--base-url", baseUrl, environment).orNothing(SettingsOptions::webAddress),
                given("--data", data, environment).orDefault(DATA, SettingsOptions::folder),
                given("--jdbc-url", jdbcUrl, environment).orNothing(SettingsOptions::jdbcAddress),
                login.user(environment),
                login.password(environment),
                given("--trusted-proxies", trustedProxies, environment).orDefault("", SettingsOptions::addresses),
                given("--time-zone", timeZone, environment)
                        .orDefault(ZoneId.systemDefault().getId(), SettingsOptions::zone),
                mailServer(environment),
                push.read(environment),
                upkeep.read(environment));
    }

    private @Nullable MailServer mailServer(Map<String, String> environment) {
        @Nullable String mail = given("--mail-host", mailHost, environment).orNothing(this::hostName);
        if (mail == null) {
            return null;
        }
        @Nullable String from = given("--mail-from", mailFrom, environment).orNothing(SettingsOptions::mailAddress);
        if (from == null) {
            throw new BadInput("--mail-host was '%s', but --mail-from is missing; letters need an address to come from."
                    .formatted(mail));
        }
        return new MailServer(
                mail,
                given("--mail-port", mailPort, environment).orDefault(MAIL_PORT, SettingsOptions::portNumber),
                given("--mail-user", mailUser, environment).orNothing(Given::text),
                given("--mail-password", mailPassword, environment).orNothing(Given::text),
                from,
                given("--mail-security", mailSecurity, environment)
                        .orDefault(MAIL_SECURITY, SettingsOptions::security));
    }

    private static String mailAddress(Given given) {
        if (!given.text().matches("[^@\\s]+@[^@\\s]+")) {
            throw given.refused("an address such as seeds@example.org is accepted");
        }
        return given.text();
    }

    private static MailServer.Security security(Given given) {
        return switch (given.text()) {
            case "starttls" -> MailServer.Security.STARTTLS;
            case "tls" -> MailServer.Security.TLS;
            case "none" -> MailServer.Security.NONE;
            default -> throw given.refused("starttls, tls or none is accepted");
        };
    }

    static Given given(String option, @Nullable String typed, Map<String, String> environment) {
        String variable = variable(option);
        String set = environment.get(variable);
        return typed != null || set == null || set.isBlank()
                ? new Given(option, typed)
                : new Given(variable, set.strip());
    }

    /** The environment variable that stands for an option. */
    static String variable(String option) {
        return "WARMSHELF_" + option.substring(2).replace('-', '_').toUpperCase(Locale.ROOT);
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

    static Path folder(Given given) {
        try {
            return Path.of(given.text());
        } catch (InvalidPathException notAPath) {
            throw given.refused("the path of a folder is accepted");
        }
    }

    static String jdbcAddress(Given given) {
        if (!given.text().startsWith("jdbc:postgresql:") && !given.text().startsWith("jdbc:h2:")) {
            throw given.refused("an address that starts with jdbc:postgresql: or jdbc:h2: is accepted");
        }
        return given.text();
    }

    private static Set<String> addresses(Given given) {
        return Arrays.stream(given.text().split(","))
                .map(String::strip)
                .filter(address -> !address.isEmpty())
                .map(address -> network(given, address))
                .collect(Collectors.toUnmodifiableSet());
    }

    private static String network(Given given, String address) {
        if (!TrustedProxies.isNetwork(address)) {
            throw given.refused(
                    "addresses such as 10.0.0.7 or networks such as 10.0.0.0/8, separated by commas, are accepted");
        }
        return address;
    }

    private static ZoneId zone(Given given) {
        try {
            return ZoneId.of(given.text());
        } catch (DateTimeException unknown) {
            throw given.refused("a time zone such as America/Chicago is accepted");
        }
    }

    /** What was given for one setting, and by which option or variable. */
    record Given(String by, @Nullable String typed) {
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
