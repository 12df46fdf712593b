package warmshelf.testing;

import java.util.ArrayList;
import java.util.List;
import org.jooq.ExecuteContext;
import org.jooq.ExecuteListener;
import org.jooq.ExecuteListenerProvider;
import org.jooq.Query;
import org.jooq.impl.DefaultExecuteListenerProvider;
import warmshelf.db.Database;

/** Writes down what a database is asked, statement by statement. */
public final class AskedOf implements ExecuteListener {
    private final transient List<String> statements = new ArrayList<>();
    private final transient List<Query> queries = new ArrayList<>();

    /** Listens from now on, beside whoever listens already. */
    public static AskedOf from(Database database) {
        AskedOf asked = new AskedOf();
        database.sql().configuration().set(append(database, asked));
        return asked;
    }

    private static ExecuteListenerProvider[] append(Database database, AskedOf asked) {
        List<ExecuteListenerProvider> all =
                new ArrayList<>(List.of(database.sql().configuration().executeListenerProviders()));
        all.add(new DefaultExecuteListenerProvider(asked));
        return all.toArray(ExecuteListenerProvider[]::new);
    }

    @Override
    public synchronized void executeStart(ExecuteContext context) {
        statements.add(String.valueOf(context.sql()));
        if (context.query() != null) {
            queries.add(context.query());
        }
    }

    /** How the database would go about what it was asked so far. */
    public synchronized List<String> plans(Database database) {
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
