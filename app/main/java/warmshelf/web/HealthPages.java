package warmshelf.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BooleanSupplier;

/** Tells a watching script whether the program and its database answer. */
public final class HealthPages implements Pages {
    static final String ADDRESS = "/health";

    private final BooleanSupplier databaseAnswers;

    public HealthPages(BooleanSupplier databaseAnswers) {
        this.databaseAnswers = databaseAnswers;
    }

    @Override
    public void register(RoutesConfig routes) {
        // Anyone: watching scripts have no sign-in, and the answer tells nothing of the group.
        routes.get(ADDRESS, this::health, Role.ANYONE);
    }

    private void health(Context ctx) {
        boolean answers = databaseAnswers.getAsBoolean();
        Map<String, String> health = new LinkedHashMap<>();
        health.put("status", answers ? "ok" : "trouble");
        health.put("database", answers ? "ok" : "does not answer");
        health.put("version", version());
        ctx.status(answers ? HttpStatus.OK : HttpStatus.SERVICE_UNAVAILABLE).json(health);
    }

    private static String version() {
        String version = HealthPages.class.getPackage().getImplementationVersion();
        return version == null ? "unpackaged" : version;
    }
}
