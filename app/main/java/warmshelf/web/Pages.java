package warmshelf.web;

import io.javalin.config.RoutesConfig;

/** One feature's routes. */
public interface Pages {
    void register(RoutesConfig routes);
}
