package warmshelf.response;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.OwnCrop;

/**
 * All that the page of a crop shows.
 *
 * @param page how its seed answers to temperature
 * @param reprints where the sources of its days disagree
 * @param slips what is done instead where it is not sown, or empty
 * @param own what a coordinator wrote; null: it is as the reference has it
 * @param ownOn the day on which it was written
 * @param reference the reference's row; null: it has none
 * @param seasonEnds what is known of the ends of its season
 * @param hazards what lists of poisonous plants say of it; none: it was looked up in none
 * @param agreements of each matter, how many extension services were read and whether they agree
 * @param said what extension services say of it
 */
record CropDetailPage(
        CropPage page,
        List<String> reprints,
        String slips,
        @Nullable OwnCrop own,
        @Nullable LocalDate ownOn,
        @Nullable Crop reference,
        List<CropFacts.Fact> facts,
        List<SeasonLine> seasonEnds,
        List<HazardLine> hazards,
        List<SourceAgreement> agreements,
        List<SourceWords.Said> said,
        List<CropPages.KnownVariety> varieties) {}
