package warmshelf.web;

import static warmshelf.web.WebSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * Tells whatever watches how the program is. At one address, whether it is ready for people: that is for a load balancer. At another,
 * whether it lives at all: a service that is started anew for every moment its database is away would never come back.
 */
public final class HealthPages implements Pages {
    static final String ADDRESS = "/health";
    static final String LIVE = "/health/live";

    private final BooleanSupplier databaseAnswers;
    private final List<Supplier<HealthPart>> parts;

    /** @param parts what else is told; a problem there does not keep people from what still works */
    public HealthPages(BooleanSupplier databaseAnswers, List<Supplier<HealthPart>> parts) {
        this.databaseAnswers = databaseAnswers;
        this.parts = parts;
    }

    @Override
    public void register(RoutesConfig routes) {
        // Anyone: watching scripts have no sign-in, and the answer tells nothing of the group.
        routes.get(ADDRESS, this::health, Role.ANYONE);
        routes.get(LIVE, ctx -> ctx.json(Map.of("live", true)), Role.ANYONE);
    }

    private void health(Context ctx) {
        boolean ready = databaseAnswers.getAsBoolean();
        List<HealthPart.Problem> problems = new ArrayList<>();
        if (!ready) {
            problems.add(new HealthPart.Problem("database-away", SAY.databaseAway()));
        }
        Map<String, Object> health = new LinkedHashMap<>();
        health.put("status", ready ? "ok" : "trouble");
        health.put("database", ready ? "ok" : "does not answer");
        health.put("version", version());
        health.put("live", true);
        health.put("ready", ready);
        for (Supplier<HealthPart> each : parts) {
            HealthPart part = each.get();
            health.put(part.name(), part.facts());
            problems.addAll(part.problems());
        }
        health.put("problems", problems);
        ctx.status(ready ? HttpStatus.OK : HttpStatus.SERVICE_UNAVAILABLE).json(health);
    }

    /** The version of this program. */
    public static String version() {
        String version = HealthPages.class.getPackage().getImplementationVersion();
        return version == null ? "unpackaged" : version;
    }
}
