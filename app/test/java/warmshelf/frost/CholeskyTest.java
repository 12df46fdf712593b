package warmshelf.frost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CholeskyTest {
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 7, 40})
    void it_solves_what_the_reference_library_solves(int size) {
        Random random = new Random(size);
        RealMatrix factor = new Array2DRowRealMatrix(size, size);
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                factor.setEntry(i, j, random.nextGaussian());
            }
            factor.addToEntry(i, i, size);
        }
        RealMatrix matrix = factor.multiply(factor.transpose());
        double[] right = random.doubles(size, -5, 5).toArray();

        double[] solved = new Cholesky(matrix.getData()).solve(right);

        double[] reference = new CholeskyDecomposition(matrix, 1e-9, 1e-12)
                .getSolver()
                .solve(new ArrayRealVector(right))
                .toArray();
        assertThat(solved).containsExactly(reference, within(1e-9));
    }

    @Test
    void a_matrix_that_is_not_positive_definite_is_refused() {
        assertThatThrownBy(() -> new Cholesky(new double[][] {{1, 2}, {2, 1}}))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
