package warmshelf.seed;

import java.util.List;

/**
 * Which lots to list.
 *
 * @param text part of a variety's name in any capitals, or empty for all
 * @param cropIds lots of these crops are found as well, whatever their variety; the crops whose name holds the text
 * @param page counted from 0
 */
public record LotSearch(String text, List<String> cropIds, int page) {
    public static final int LOTS_PER_PAGE = 50;

    public LotSearch {
        cropIds = List.copyOf(cropIds);
    }

    public static LotSearch everything() {
        return new LotSearch("", List.of(), 0);
    }
}
