package warmshelf.finding.statistics;

import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/** Deviations of several arms from what is expected, with their covariances; they sum to zero, so the last tells nothing new. */
final class QuadraticForm {
    private static final double VARIES = 1e-12;

    private final double[] deviation;
    private final double[][] covariance;

    QuadraticForm(int arms) {
        deviation = new double[arms];
        covariance = new double[arms][arms];
    }

    void add(int arm, double more) {
        deviation[arm] += more;
    }

    void add(int arm, int other, double more) {
        covariance[arm][other] += more;
    }

    /** The deviations' chi-square; empty where there is one arm, or nothing varies, so that no difference could show. */
    Optional<TestOutcome> outcome() {
        int df = deviation.length - 1;
        return df < 1 ? Optional.empty() : solved(df).map(solved -> outcome(df, solved));
    }

    private TestOutcome outcome(int df, double[] solved) {
        double chiSquare = 0;
        for (int i = 0; i < df; i++) {
            chiSquare += deviation[i] * solved[i];
        }
        return new TestOutcome(
                chiSquare, df, ChiSquaredDistribution.of(df).survivalProbability(Math.max(0, chiSquare)));
    }

    /** Gauss's elimination; the matrix is positive definite where every arm could have come out otherwise. */
    private Optional<double[]> solved(int size) {
        double[][] matrix = new double[size][];
        double[] right = Arrays.copyOf(deviation, size);
        for (int i = 0; i < size; i++) {
            matrix[i] = covariance[i].clone();
        }
        for (int pivot = 0; pivot < size; pivot++) {
            if (!(matrix[pivot][pivot] > VARIES)) {
                return Optional.empty();
            }
            for (int row = pivot + 1; row < size; row++) {
                double factor = matrix[row][pivot] / matrix[pivot][pivot];
                for (int column = pivot; column < size; column++) {
                    matrix[row][column] -= factor * matrix[pivot][column];
                }
                right[row] -= factor * right[pivot];
            }
        }
        for (int row = size - 1; row >= 0; row--) {
            for (int column = row + 1; column < size; column++) {
                right[row] -= matrix[row][column] * right[column];
            }
            right[row] /= matrix[row][row];
        }
        return Optional.of(right);
    }
}
