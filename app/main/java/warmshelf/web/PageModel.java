package warmshelf.web;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A page's record as its template reads it: each component under its own name. */
final class PageModel {
    private PageModel() {}

    static Map<String, @Nullable Object> of(Record page) {
        Map<String, @Nullable Object> model = new HashMap<>();
        for (RecordComponent component : page.getClass().getRecordComponents()) {
            model.put(component.getName(), read(component, page));
        }
        return model;
    }

    private static @Nullable Object read(RecordComponent component, Record page) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(page);
        } catch (IllegalAccessException | InvocationTargetException unreadable) {
            throw new IllegalStateException("%s cannot be read".formatted(component), unreadable);
        }
    }
}
