package warmshelf.seed;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;

/**
 * What the seed box's list shows.
 *
 * @param text what was searched for, or empty
 * @param number of the page shown, from 0
 * @param more whether another page follows
 */
public record SeedBoxPage(List<LotWords> lots, String text, int number, boolean more) {
    private static final int LONGEST_SEARCH = 80;

    /** The search for lots whose variety or crop holds the text. */
    static LotSearch search(String text, int number, CropCatalogue crops) {
        String wanted = text.strip();
        String shortened = wanted.length() <= LONGEST_SEARCH ? wanted : wanted.substring(0, LONGEST_SEARCH);
        String lower = shortened.toLowerCase(Locale.ROOT);
        List<String> cropIds = crops.all().stream()
                .filter(crop -> crop.name().toLowerCase(Locale.ROOT).contains(lower))
                .map(Crop::id)
                .toList();
        return new LotSearch(shortened, cropIds, number);
    }

    /** @param found the lots of the page, and one more where another page follows */
    static SeedBoxPage of(
            LotSearch search,
            List<Lot> found,
            Map<UUID, List<GerminationTest>> tests,
            CropCatalogue crops,
            int season) {
        List<LotWords> lots = found.stream()
                .limit(LotSearch.LOTS_PER_PAGE)
                .map(lot -> LotWords.of(lot, tests.getOrDefault(lot.id(), List.of()), crops, season))
                .toList();
        return new SeedBoxPage(lots, search.text(), search.page(), found.size() > LotSearch.LOTS_PER_PAGE);
    }
}
