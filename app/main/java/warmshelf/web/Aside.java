package warmshelf.web;

import java.util.HashMap;
import java.util.Map;

/** What a room further downstream adds to a page: it puts its part of the model here, and the page's template shows it. */
public interface Aside {
    Map<String, Object> model(Visitor visitor);

    /** What several rooms add to one page. */
    static Aside of(Aside... asides) {
        return visitor -> {
            Map<String, Object> all = new HashMap<>();
            for (Aside each : asides) {
                all.putAll(each.model(visitor));
            }
            return all;
        };
    }
}
