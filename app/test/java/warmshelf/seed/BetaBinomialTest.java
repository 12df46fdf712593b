package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BetaBinomialTest {

    // An independent sum in decimal arithmetic: P(x) = C(n,x) a(a+1).. b(b+1).. / ((a+b)(a+b+1)..).
    @ParameterizedTest
    @CsvSource({"1, 1, 0.5, 0.5", "4, 7, 17.5, 3.5", "12, 20, 8.5, 2.5", "24, 60, 5.5, 5.5", "150, 200, 90.5, 10.5"})
    void chances_are_those_of_the_sum_in_decimal_arithmetic(int wanted, int trials, double a, double b) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int x = wanted; x <= trials; x++) {
            sum = sum.add(decimalChance(x, trials, a, b));
        }

        assertThat(BetaBinomial.atLeast(wanted, trials, a, b)).isCloseTo(sum.doubleValue(), within(1e-10));
    }

    @Test
    void an_even_prior_makes_every_count_equally_likely() {
        assertThat(BetaBinomial.atLeast(3, 9, 1, 1)).isCloseTo(0.7, within(1e-12));
    }

    // The average of commons-math3's binomial over many quantiles of its beta distribution.
    @ParameterizedTest
    @CsvSource({"10000, 13000, 800.5, 200.5", "10000, 12600, 8000.5, 2000.5", "5000, 9000, 6.5, 4.5"})
    void thousands_of_plants_do_not_lose_precision(int wanted, int trials, double a, double b) {
        BetaDistribution shares = new BetaDistribution(null, a, b);
        double sum = 0;
        for (int i = 0; i < 400; i++) {
            double share = shares.inverseCumulativeProbability((i + 0.5) / 400);
            sum += 1 - new BinomialDistribution(null, trials, share).cumulativeProbability(wanted - 1);
        }

        assertThat(BetaBinomial.atLeast(wanted, trials, a, b)).isCloseTo(sum / 400, within(1e-3));
    }

    @Test
    void the_average_over_the_share_agrees_with_the_closed_form() {
        double averaged =
                BetaAverage.of(17.5, 3.5, p -> 1 - new BinomialDistribution(null, 30, p).cumulativeProbability(23));

        assertThat(averaged).isCloseTo(BetaBinomial.atLeast(24, 30, 17.5, 3.5), within(1e-9));
    }

    // Seeds that come up and live at 0.8 are seeds that do both, each with 0.8 of the share; commons-math3's binomial.
    @ParameterizedTest
    @CsvSource({"6, 9, 17.5, 3.5", "24, 44, 5.5, 5.5", "150, 240, 90.5, 10.5", "300, 500, 8000.5, 2000.5"})
    void the_average_over_successes_agrees_with_that_over_the_share(int wanted, int trials, double a, double b) {
        double averaged = BetaBinomial.average(
                trials, a, b, up -> 1 - new BinomialDistribution(null, up, 0.8).cumulativeProbability(wanted - 1));

        assertThat(averaged)
                .isCloseTo(
                        BetaAverage.of(
                                a,
                                b,
                                p -> 1
                                        - new BinomialDistribution(null, trials, 0.8 * p)
                                                .cumulativeProbability(wanted - 1)),
                        within(1e-9));
    }

    @Test
    void more_successes_than_trials_never_happen() {
        assertThat(BetaBinomial.atLeast(5, 4, 1, 1)).isZero();
    }

    private static BigDecimal decimalChance(int x, int n, double a, double b) {
        BigDecimal chance = new BigDecimal(choose(n, x));
        chance = chance.multiply(rising(a, x)).multiply(rising(b, n - x));
        return chance.divide(rising(a + b, n), new MathContext(40));
    }

    private static BigInteger choose(int n, int k) {
        BigInteger product = BigInteger.ONE;
        for (int i = 1; i <= k; i++) {
            product = product.multiply(BigInteger.valueOf(n - k + i)).divide(BigInteger.valueOf(i));
        }
        return product;
    }

    private static BigDecimal rising(double start, int factors) {
        BigDecimal product = BigDecimal.ONE;
        for (int i = 0; i < factors; i++) {
            product = product.multiply(BigDecimal.valueOf(start + i));
        }
        return product;
    }
}
