package warmshelf.web;

import java.util.Map;

/** What a room further downstream adds to a page: it puts its part of the model here, and the page's template shows it. */
public interface Aside {
    Map<String, Object> model(Visitor visitor);
}
