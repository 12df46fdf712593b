package warmshelf.words;

import java.util.List;

/**
 * Some lines of a long list, as much as one page shows.
 *
 * @param lines of this page
 * @param page counted from 1
 * @param pages how many there are, at least one
 * @param total lines of the whole list
 */
public record PartOfList<T>(List<T> lines, int page, int pages, int total) {
    public static final int LINES = 50;

    public PartOfList {
        lines = List.copyOf(lines);
    }

    /** A page of a list; beyond its end the last one. */
    public static <T> PartOfList<T> of(List<T> all, int page) {
        int pages = Math.max(1, (all.size() + LINES - 1) / LINES);
        int shown = Math.min(Math.max(1, page), pages);
        int from = (shown - 1) * LINES;
        return new PartOfList<>(all.subList(from, Math.min(all.size(), from + LINES)), shown, pages, all.size());
    }

    public boolean isFirst() {
        return page == 1;
    }

    public boolean isLast() {
        return page == pages;
    }
}
