package warmshelf.web;

import java.util.HashMap;
import java.util.Map;

/** What a room further downstream adds to a page: it puts its part of the model here, and the page's template shows it. */
public interface Aside {
    Map<String, Object> model(Visitor visitor);

    /** What both add. */
    default Aside and(Aside other) {
        return visitor -> {
            Map<String, Object> both = new HashMap<>(model(visitor));
            both.putAll(other.model(visitor));
            return both;
        };
    }
}
