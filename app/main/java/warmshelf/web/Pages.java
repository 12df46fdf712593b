package warmshelf.web;

import io.javalin.config.RoutesConfig;
import java.time.Duration;
import java.util.Map;
import java.util.Set;
import warmshelf.words.Units;

/** One feature's routes. */
public interface Pages {
    void register(RoutesConfig routes);

    /** The addresses to which files of up to 250 MB may be posted; all others take 1 MB. */
    default Set<String> uploads() {
        return Set.of();
    }

    /**
     * The addresses to which scripts post JSON, also what waited on a phone since another sign-in: no token is asked for, the
     * browser's word on where the request comes from decides, and whoever is signed out is told so in JSON.
     */
    default Set<String> forScripts() {
        return Set.of();
    }

    /** What every template may fill in, by its name there, for a reader of these units. */
    default Map<String, Object> forTemplates(Units units) {
        return Map.of();
    }

    /** How much is new for a visitor; the navigation shows the sum. */
    default int newFor(Visitor visitor) {
        return 0;
    }

    /** How much waits for the decision of a visitor who coordinates the group or a site; the navigation shows the sum. */
    default int toDecide(Visitor coordinator) {
        return 0;
    }

    /**
     * Hears of a request that was answered.
     *
     * @param route as the program writes its address; '-' where it has none
     */
    default void answered(String method, String route, int status, Duration took) {}

    /** Ends what the pages have begun in the background; called when the server stops. */
    default void stop() {}
}
