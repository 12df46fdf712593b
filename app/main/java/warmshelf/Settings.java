package warmshelf;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Database;
import warmshelf.reminder.MailServer;
import warmshelf.reminder.ReminderRoom;
import warmshelf.reminder.push.PushKeys;
import warmshelf.web.WebSettings;

/**
 * How one installation runs. Read once, at start.
 *
 * @param host the network address to listen on
 * @param port 0 for any free one
 * @param baseUrl the address people type; null: this machine at the port
 * @param dataFolder where the H2 file lies, unless a JDBC address is given
 * @param trustedProxies addresses of reverse proxies whose word on the visitor's address is taken
 * @param zone counts the days until the group has named its own zone
 * @param mail the server that takes letters; null: none are sent
 * @param push the keys for notices on phones; null: none are sent
 * @param upkeep what the program sees to by itself
 */
public record Settings(
        String host,
        int port,
        @Nullable String baseUrl,
        Path dataFolder,
        @Nullable String jdbcUrl,
        @Nullable String jdbcUser,
        @Nullable String jdbcPassword,
        Set<String> trustedProxies,
        ZoneId zone,
        @Nullable MailServer mail,
        @Nullable PushKeys push,
        Upkeep upkeep) {

    /** With nothing that the program sees to by itself. */
    public Settings(
            String host,
            int port,
            @Nullable String baseUrl,
            Path dataFolder,
            @Nullable String jdbcUrl,
            @Nullable String jdbcUser,
            @Nullable String jdbcPassword,
            Set<String> trustedProxies,
            ZoneId zone,
            @Nullable MailServer mail,
            @Nullable PushKeys push) {
        this(
                host,
                port,
                baseUrl,
                dataFolder,
                jdbcUrl,
                jdbcUser,
                jdbcPassword,
                trustedProxies,
                zone,
                mail,
                push,
                Upkeep.NONE);
    }

    /** On this machine only, at any free port, in UTC: for tests and trials. */
    public static Settings onFreePort(Path dataFolder) {
        return new Settings("127.0.0.1", 0, null, dataFolder, null, null, null, Set.of(), ZoneId.of("UTC"), null, null);
    }

    /**
     * Opens the group's database and brings its tables up to date.
     *
     * @throws BadInput when it cannot be used as it was named
     */
    public Database openDatabase() {
        Database database = jdbcUrl == null
                ? DatabasePlace.inFolder("--data", dataFolder).open()
                : DatabasePlace.at("--jdbc-url", jdbcUrl, jdbcUser, jdbcPassword)
                        .open();
        database.room().ifPresent(room -> room.keepFree(upkeep.keepFree()));
        database.slowAfter(upkeep.slowQuery());
        return database;
    }

    ReminderRoom.Means means() {
        return new ReminderRoom.Means(mail, push);
    }

    WebSettings web() {
        return new WebSettings(host, port, baseUrl, trustedProxies, zone);
    }

    String addressAt(int actualPort) {
        return baseUrl == null ? "http://localhost:" + actualPort : baseUrl;
    }
}
