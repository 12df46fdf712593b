package warmshelf.timeline;

import java.util.Optional;
import warmshelf.crop.CelsiusRange;
import warmshelf.crop.Emergence;
import warmshelf.crop.TemperatureResponse;

/**
 * When the seed is expected to show, counted from sowing, at the temperature it will lie at.
 *
 * @param possible false: it cannot come up at that temperature, and the days are those at its best temperature
 * @param seedlings days until seedlings stand above the compost
 * @param roots days until a root shows on damp paper
 * @param fromRoots days from a seed with its root just showing, set in a cell, to its seedling
 * @param comfortableDays days that the crop's usual weeks indoors allow for coming up: those at the cooler, slower end of its
 *     comfortable band, as published: where seed is known to be slower here, the usual weeks are too short by as much
 */
record ExpectedEmergence(
        boolean possible, LikelyDays seedlings, LikelyDays roots, LikelyDays fromRoots, int comfortableDays) {
    // Where nothing is known at all (slips): two weeks, one at the least, four at the most.
    private static final Emergence UNKNOWN = new Emergence(14, 7, 28, java.util.OptionalDouble.empty());

    static ExpectedEmergence of(TemperatureResponse response, double celsius) {
        Optional<Emergence> here = response.at(celsius);
        Emergence days = here.or(() -> response.at(response.bestC())).orElse(UNKNOWN);
        return new ExpectedEmergence(
                here.isPresent(),
                part(days, 1),
                part(days, Emergence.ROOT_SHOWS_AT),
                part(days, 1 - Emergence.ROOT_SHOWS_AT),
                comfortableDays(response.published(), days));
    }

    /** How many days later than the usual weeks allow for; 0 where it is warm enough. */
    int slowerDays() {
        return Math.max(0, seedlings.usual() - comfortableDays);
    }

    private static LikelyDays part(Emergence days, double share) {
        return LikelyDays.rounded(share * days.days5(), share * days.days(), share * days.days95());
    }

    private static int comfortableDays(TemperatureResponse response, Emergence otherwise) {
        CelsiusRange band = response.comfortable();
        double atLow = response.at(band.low()).map(Emergence::days).orElse(0.0);
        double atHigh = response.at(band.high()).map(Emergence::days).orElse(0.0);
        double slower = Math.max(atLow, atHigh);
        return (int) Math.max(1, Math.round(slower > 0 ? slower : otherwise.days()));
    }
}
