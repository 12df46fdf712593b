package warmshelf.sowing;

import org.jspecify.annotations.Nullable;
import warmshelf.seed.LotBalance;

/**
 * How a sowing that is not sown yet stands with its seed.
 *
 * @param request what was asked for it and answered; null: nobody had to be asked
 * @param there how many of its seeds its lot has for it, where those are fewer than promised; null: all, or nobody has counted
 */
public record SeedStanding(
        @Nullable LotRequest request, @Nullable Integer there) {
    static SeedStanding of(Sowing sowing, LotBalance balance, @Nullable LotRequest request) {
        return new SeedStanding(
                request,
                balance.shortfalls().stream()
                        .filter(shortfall -> shortfall.hold().sowingId().equals(sowing.id()))
                        .map(LotBalance.Shortfall::there)
                        .findFirst()
                        .orElse(null));
    }

    /** Whether its grower has to choose another lot. */
    public boolean isLacking() {
        return there != null || (request != null && request.isWithoutSeed());
    }
}
