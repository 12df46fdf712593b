package warmshelf.seed;

import java.util.Optional;
import warmshelf.crop.Emergence;
import warmshelf.crop.TemperatureResponse;

/**
 * How a crop's seed is tested on damp paper.
 *
 * @param celsius the temperature at which its seed does best
 * @param days until nearly all that is alive shows a root there
 */
public record HowToTest(double celsius, int days) {
    /** Empty where no table tells how long the crop takes. */
    public static Optional<HowToTest> of(TemperatureResponse response) {
        double best = response.bestC();
        return response.at(best)
                .map(emergence -> new HowToTest(best, (int) Math.ceil(Emergence.ROOT_SHOWS_AT * emergence.days95())));
    }
}
