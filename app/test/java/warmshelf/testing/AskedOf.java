package warmshelf.testing;

import java.util.ArrayList;
import java.util.List;
import org.jooq.ExecuteContext;
import org.jooq.ExecuteListener;
import org.jooq.ExecuteListenerProvider;
import org.jooq.Query;
import org.jooq.impl.DefaultExecuteListenerProvider;
import warmshelf.db.Database;

/** Writes down what a database is asked, statement by statement, until it is closed: databases serve many tests. */
public final class AskedOf implements ExecuteListener, AutoCloseable {
    private final transient List<String> statements = new ArrayList<>();
    private final transient List<Query> queries = new ArrayList<>();

    private final transient Database database;
    private final transient ExecuteListenerProvider[] before;

    private AskedOf(Database database) {
        this.database = database;
        this.before = database.sql().configuration().executeListenerProviders();
    }

    /** Listens from now on, beside whoever listens already. */
    public static AskedOf from(Database database) {
        AskedOf asked = new AskedOf(database);
        List<ExecuteListenerProvider> all = new ArrayList<>(List.of(asked.before));
        all.add(new DefaultExecuteListenerProvider(asked));
        database.sql().configuration().set(all.toArray(ExecuteListenerProvider[]::new));
        return asked;
    }

    @Override
    public void close() {
        database.sql().configuration().set(before);
    }

    @Override
    public synchronized void executeStart(ExecuteContext context) {
        statements.add(String.valueOf(context.sql()));
        if (context.query() != null) {
            queries.add(context.query());
        }
    }

    /** How the database would go about what it was asked so far. */
    public synchronized List<String> plans() {
        return List.copyOf(queries).stream()
                .map(query -> database.sql().explain(query).plan())
                .toList();
    }

    /** What was asked since this was last called. */
    public synchronized List<String> since() {
        List<String> asked = List.copyOf(statements);
        statements.clear();
        return asked;
    }
}
