package warmshelf.frost;

import java.util.List;

/**
 * What a page says where nothing is known yet of the frost in a member's own garden.
 *
 * @param postcode as the member has it
 * @param country its name
 * @param placed whether it is known where the garden lies, so that only dates are missing
 * @param coordinators who can bring in stations and postcodes for everybody
 */
public record FirstEvidence(String postcode, String country, boolean placed, List<String> coordinators) {
    public FirstEvidence {
        coordinators = List.copyOf(coordinators);
    }
}
