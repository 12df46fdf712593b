package warmshelf.db;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.time.OffsetDateTime;
import java.util.List;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.impl.DSL;

/**
 * A program that has the group's database open. Each names itself to PostgreSQL, which tells who is connected; nothing is written
 * for it.
 *
 * @param name of its machine and process
 * @param since its oldest connection was opened; one is opened anew every half hour
 * @param thisOne whether it is the program that asks
 */
public record ProgramOnDatabase(String name, OffsetDateTime since, boolean thisOne) {
    private static final String PREFIX = "warmshelf ";
    /** PostgreSQL keeps 63 characters of it. */
    private static final int LONGEST = 63;

    static final String OWN_NAME = ownName();

    private static String ownName() {
        String name =
                PREFIX + machine() + ", process " + ProcessHandle.current().pid();
        return name.length() > LONGEST ? name.substring(0, LONGEST) : name;
    }

    private static String machine() {
        try {
            return InetAddress.getLocalHost().getHostName();
        } catch (UnknownHostException nameless) {
            return "a machine without a name";
        }
    }

    static List<ProgramOnDatabase> all(DSLContext sql) {
        Field<String> name = DSL.field(DSL.name("application_name"), String.class);
        Field<OffsetDateTime> since = DSL.min(DSL.field(DSL.name("backend_start"), OffsetDateTime.class));
        return sql.select(name, since)
                .from("pg_stat_activity")
                .where("datname = current_database()")
                .and(name.startsWith(PREFIX))
                .groupBy(name)
                .orderBy(since, name)
                .fetch(row -> new ProgramOnDatabase(
                        row.value1().substring(PREFIX.length()),
                        row.value2(),
                        row.value1().equals(OWN_NAME)));
    }
}
