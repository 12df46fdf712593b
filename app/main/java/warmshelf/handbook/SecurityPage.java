package warmshelf.handbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import warmshelf.group.GuessLimit;

/**
 * The handbook's chapter on security.
 *
 * @param next the page to read after it; null after the last
 * @param parts what the standard asks for, by its chapters and in their order
 * @param held how many of its rows the program holds
 * @param rows how many rows there are
 */
record SecurityPage(
        Chapter chapter,
        @Nullable Chapter next,
        Map<String, List<SecurityItem>> parts,
        long held,
        int rows,
        List<GuessLimit> limits) {
    private static final List<SecurityItem> ITEMS = SecurityItem.all();

    static SecurityPage of(Chapter chapter) {
        Map<String, List<SecurityItem>> parts = new LinkedHashMap<>();
        ITEMS.forEach(item -> parts.computeIfAbsent(item.chapter(), first -> new ArrayList<>())
                .add(item));
        long held = ITEMS.stream()
                .filter(item -> item.standing() == SecurityItem.Standing.HELD)
                .count();
        return new SecurityPage(
                chapter, chapter.next().orElse(null), parts, held, ITEMS.size(), List.of(GuessLimit.values()));
    }
}
