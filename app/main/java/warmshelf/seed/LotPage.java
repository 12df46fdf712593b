package warmshelf.seed;

import java.util.List;
import warmshelf.crop.CropCatalogue;

/**
 * What the page of one lot shows.
 *
 * @param tests the newest first
 * @param changeable whether the reader may change it
 */
public record LotPage(LotWords lot, List<GerminationTest> tests, boolean changeable) {
    static LotPage of(Lot lot, List<GerminationTest> tests, CropCatalogue crops, int season, boolean changeable) {
        return new LotPage(LotWords.of(lot, tests, crops, season), tests, changeable);
    }
}
