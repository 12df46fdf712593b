package warmshelf.program;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Set;
import java.util.UUID;
import warmshelf.exchange.Taker;

/**
 * Whose script asks, as things stand at this moment.
 *
 * @param coordinator whether its member coordinates the group now, whatever they did when they made the token
 * @param zone the group's
 * @param today in that zone
 */
record ProgramCaller(
        UUID tokenId,
        String tokenName,
        Set<TokenScope> scopes,
        UUID memberId,
        boolean coordinator,
        String group,
        int season,
        ZoneId zone,
        LocalDate today) {

    /** What they may read is what they may take out as a table. */
    Taker taker() {
        return new Taker(memberId, coordinator, zone);
    }
}
