package warmshelf.seed;

import java.util.List;

/**
 * Which lots to list.
 *
 * @param text part of a variety's name in any capitals, or empty for all
 * @param cropIds lots of these crops are found as well, whatever their variety; the crops whose name holds the text
 * @param varieties lots of exactly these varieties are found as well; those that are spelled nearly like the text
 * @param page counted from 0
 * @param forgiving whether crops and varieties were chosen by likeness
 */
public record LotSearch(String text, List<String> cropIds, List<String> varieties, int page, boolean forgiving) {
    public static final int LOTS_PER_PAGE = 30;

    public LotSearch {
        cropIds = List.copyOf(cropIds);
        varieties = List.copyOf(varieties);
    }

    /** A search that does not forgive spelling. */
    public LotSearch(String text, List<String> cropIds, int page) {
        this(text, cropIds, List.of(), page, false);
    }

    public static LotSearch everything() {
        return new LotSearch("", List.of(), 0);
    }
}
