package warmshelf.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.junit.jupiter.api.Test;

class EmergenceTest {
    /** Days drawn from the two halves, measured by Apache commons-math. */
    @Test
    void the_spread_is_that_of_the_logarithms_of_days_drawn_from_it() {
        Emergence peppers = new Emergence(8, 7, 14, OptionalDouble.empty());
        Random random = new Random(3);
        StandardDeviation seen = new StandardDeviation();
        for (int i = 0; i < 200_000; i++) {
            double z = random.nextGaussian();
            double sigma = Math.log(z < 0 ? 8.0 / 7 : 14.0 / 8) / 1.6448536;
            seen.increment(sigma * z);
        }

        assertThat(peppers.logSpread()).isCloseTo(seen.getResult(), within(0.002));
    }
}
