package warmshelf.frost.garden;

import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.words.Choice;

/**
 * What a member says of frost in their own garden.
 *
 * @param pointForm the form of its exact point
 * @param form the form of a correction
 * @param riskForm the form of the chances accepted
 * @param point where it lies, in words; null: not set
 * @param version of the point; 0: not set
 * @param hows days later or earlier, or the dates themselves
 * @param ways later or earlier
 * @param own the correction that the member made for it
 * @param holding the correction that counts for it, their own or an area's
 */
record GardenPage(
        PointForm pointForm,
        CorrectionForm form,
        RiskForm riskForm,
        @Nullable String point,
        int version,
        String heightUnit,
        List<Choice> hows,
        List<Choice> ways,
        @Nullable CorrectionLine own,
        @Nullable CorrectionLine holding,
        List<CorrectionLine> ended) {}
