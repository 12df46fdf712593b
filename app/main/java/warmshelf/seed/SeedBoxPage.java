package warmshelf.seed;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;

/**
 * What the seed box's list shows.
 *
 * @param text what was searched for, or empty
 * @param number of the page shown, from 0
 * @param more whether another page follows
 * @param forgiven whether these are not what was typed, but spelled nearly like it
 * @param worthTesting what to test before the season, the most useful first
 */
public record SeedBoxPage(
        List<LotWords> lots,
        String text,
        int number,
        boolean more,
        boolean forgiven,
        List<WorthTesting.Suggestion> worthTesting) {
    private static final int LONGEST_SEARCH = 80;

    /** The search for lots whose variety or crop holds the text. */
    static LotSearch search(String text, int number, CropCatalogue crops) {
        String wanted = text.strip();
        String shortened = wanted.length() <= LONGEST_SEARCH ? wanted : wanted.substring(0, LONGEST_SEARCH);
        String lower = shortened.toLowerCase(Locale.ROOT);
        List<String> cropIds = crops.all().stream()
                .filter(crop -> crop.name().toLowerCase(Locale.ROOT).contains(lower)
                        || crop.species().toLowerCase(Locale.ROOT).contains(lower))
                .map(Crop::id)
                .toList();
        return new LotSearch(shortened, cropIds, number);
    }

    /** The same search for whoever spells otherwise: crops, species and varieties that are nearly the text. */
    static LotSearch forgiving(LotSearch search, List<String> varieties, CropCatalogue crops) {
        String text = search.text();
        return new LotSearch(
                text,
                crops.all().stream()
                        .filter(crop -> Spelling.meant(text, crop.name()) || Spelling.meant(text, crop.species()))
                        .map(Crop::id)
                        .toList(),
                varieties.stream()
                        .filter(variety -> Spelling.meant(text, variety))
                        .toList(),
                search.page(),
                true);
    }

    /**
     * @param found the lots of the page, and one more where another page follows
     * @param balances what of each is whose, by its id
     */
    static SeedBoxPage of(
            LotSearch search,
            List<Lot> found,
            Map<UUID, LotBalance> balances,
            LotEvidence evidence,
            CropCatalogue crops,
            int season,
            List<WorthTesting.Suggestion> worthTesting) {
        List<LotWords> lots = found.stream()
                .limit(LotSearch.LOTS_PER_PAGE)
                .map(lot -> LotWords.of(Objects.requireNonNull(balances.get(lot.id())), evidence, crops, season))
                .toList();
        boolean more = found.size() > LotSearch.LOTS_PER_PAGE;
        return new SeedBoxPage(lots, search.text(), search.page(), more, search.forgiving(), worthTesting);
    }
}
