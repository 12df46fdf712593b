package warmshelf;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Set;
import org.h2.api.ErrorCode;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Database;
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
        ZoneId zone) {

    /** On this machine only, at any free port, in UTC: for tests and trials. */
    public static Settings onFreePort(Path dataFolder) {
        return new Settings("127.0.0.1", 0, null, dataFolder, null, null, null, Set.of(), ZoneId.of("UTC"));
    }

    /**
     * Opens the group's database and brings its tables up to date.
     *
     * @throws BadInput when another process has the data folder
     */
    public Database openDatabase() {
        return jdbcUrl == null ? openFolder() : Database.open(jdbcUrl, jdbcUser, jdbcPassword);
    }

    private Database openFolder() {
        try {
            return Database.inFolder(dataFolder);
        } catch (RuntimeException notOpened) {
            if (Causes.hasSqlError(notOpened, ErrorCode.DATABASE_ALREADY_OPEN_1)) {
                throw new BadInput("The data folder %s is already used by another Warmshelf. Stop that one first, or name"
                        .formatted(dataFolder.toAbsolutePath())
                        + " another folder by --data.");
            }
            throw notOpened;
        }
    }

    WebSettings web() {
        return new WebSettings(host, port, baseUrl, trustedProxies, zone);
    }

    String addressAt(int actualPort) {
        return baseUrl == null ? "http://localhost:" + actualPort : baseUrl;
    }
}
