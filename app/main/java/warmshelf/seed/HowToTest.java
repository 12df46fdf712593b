package warmshelf.seed;

import java.util.Optional;
import warmshelf.crop.Crop;
import warmshelf.crop.Emergence;
import warmshelf.crop.TemperatureResponse;

/**
 * How a crop's seed is tested on damp paper: as the rules of seed laboratories have it; where they do not have the crop, at the
 * temperature at which its seed comes up best.
 *
 * @param nightC degrees Celsius to keep it at by night
 * @param dayC by day; the same where one temperature is kept
 * @param days until nearly all that is alive shows a root there
 * @param rules the rules that say so; empty where they do not have the crop
 */
public record HowToTest(double nightC, double dayC, int days, String rules) {
    /** Empty where nothing tells how long the crop takes. */
    public static Optional<HowToTest> of(Crop crop, TemperatureResponse response) {
        return LaboratoryTest.of(crop.id())
                .map(test -> new HowToTest(test.nightC(), test.dayC(), test.days(), test.source()))
                .or(() -> atItsBest(response));
    }

    private static Optional<HowToTest> atItsBest(TemperatureResponse response) {
        double best = response.bestC();
        return response.at(best)
                .map(emergence ->
                        new HowToTest(best, best, (int) Math.ceil(Emergence.ROOT_SHOWS_AT * emergence.days95()), ""));
    }

    /** Whether it is to be warmer by day than by night. */
    public boolean alternates() {
        return dayC > nightC;
    }
}
