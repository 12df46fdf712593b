package warmshelf.frost.garden;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A correction in words.
 *
 * @param endedBy null while it holds
 * @param endedOn null while it holds
 */
public record CorrectionLine(
        UUID id,
        String area,
        String change,
        String reason,
        String by,
        LocalDate on,
        @Nullable String endedBy,
        @Nullable LocalDate endedOn) {

    static CorrectionLine of(FrostCorrection holding) {
        return line(holding, null, null);
    }

    static CorrectionLine of(EndedCorrection ended) {
        return line(ended.correction(), ended.endedBy(), ended.endedOn());
    }

    private static CorrectionLine line(
            FrostCorrection correction, @Nullable String endedBy, @Nullable LocalDate endedOn) {
        return new CorrectionLine(
                correction.id(),
                CorrectionWords.of(correction.area()),
                CorrectionWords.of(correction.change()),
                correction.reason(),
                correction.by(),
                correction.on(),
                endedBy,
                endedOn);
    }
}
