package warmshelf.response;

import static warmshelf.response.ResponseSentences.SAY;

import warmshelf.crop.CropHazard;
import warmshelf.crop.HazardClaim;
import warmshelf.guide.Source;

/** What a list of poisonous plants says of a crop, as its page shows it. */
public record HazardLine(String hazard, String says, Source source) {
    static HazardLine of(HazardClaim claim) {
        return new HazardLine(
                claim.hazard().map(CropHazard::title).orElse(SAY.nothingKnown()),
                claim.says(),
                Source.of(claim.source(), claim.sourceUrl(), claim.standing()));
    }
}
