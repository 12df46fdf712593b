package warmshelf.web;

import io.javalin.config.RoutesConfig;
import java.util.Set;

/** One feature's routes. */
public interface Pages {
    void register(RoutesConfig routes);

    /** The addresses to which files of up to 250 MB may be posted; all others take 1 MB. */
    default Set<String> uploads() {
        return Set.of();
    }

    /** Ends what the pages have begun in the background; called when the server stops. */
    default void stop() {}
}
