package warmshelf.crop;

import java.util.List;

/**
 * A cell of the trials' table that reprints print differently.
 *
 * @param celsius the soil temperature of the cell
 * @param printed what each prints, in its order: days, or words for no days
 * @param used what this program takes
 */
public record EmergenceDisagreement(double celsius, List<String> printed, String used) {
    public EmergenceDisagreement {
        printed = List.copyOf(printed);
    }
}
