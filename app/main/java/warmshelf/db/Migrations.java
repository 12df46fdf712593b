package warmshelf.db;

import java.util.Arrays;
import java.util.List;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.configuration.FluentConfiguration;

/** The steps by which the tables came to be as they are. */
public final class Migrations {
    private Migrations() {}

    /** The version of the tables after each step that this program knows, the newest last. */
    public static List<String> versions() {
        MigrationInfo[] all = configuration()
                .dataSource("jdbc:h2:mem:", null, null)
                .load()
                .info()
                .all();
        return Arrays.stream(all)
                .map(MigrationInfo::getVersion)
                .sorted()
                .map(MigrationVersion::getVersion)
                .toList();
    }

    static FluentConfiguration configuration() {
        return Flyway.configure()
                .locations("classpath:db/migration")
                // a database that a newer program has changed is refused, rather than written to in the old way
                .ignoreMigrationPatterns(new String[0]);
    }
}
