package warmshelf.response;

import static warmshelf.response.ResponseSentences.SAY;

import java.util.Arrays;
import java.util.List;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.CropSources;
import warmshelf.crop.SourceMatter;
import warmshelf.crop.SourcedRange;

/**
 * How many extension services were read on one matter of a crop, and whether they agree with what stands on its page.
 *
 * @param label the matter
 * @param words how many, and whether
 */
record SourceAgreement(String label, String words) {

    /** One for each matter; none for a crop that is the group's own. */
    static List<SourceAgreement> of(Crop crop) {
        if (CropCatalogue.bundled().find(crop.id()).isEmpty()) {
            return List.of();
        }
        return Arrays.stream(SourceMatter.values())
                .map(matter -> new SourceAgreement(
                        SourceWords.label(matter), words(CropSources.bundled().of(crop, matter))))
                .toList();
    }

    static String words(SourcedRange range) {
        if (range.isEmpty()) {
            return SAY.noneRead();
        }
        long services = range.publishers();
        int others = range.against().size();
        if (services == 1) {
            return others == 0 ? SAY.oneAgrees() : SAY.oneSaysOtherwise();
        }
        if (others > 0) {
            return SAY.someLeaveOut(services, others);
        }
        return range.differs() ? SAY.allAllowSomeMore(services) : SAY.allAllow(services);
    }
}
