package warmshelf.frost;

/** Solves equations with a symmetric positive definite matrix by taking it apart into a triangle and its mirror. */
public final class Cholesky {
    private final double[][] lower;

    /**
     * Takes a matrix apart; only its lower half is read.
     *
     * @throws IllegalArgumentException when the matrix is not positive definite
     */
    public Cholesky(double[][] matrix) {
        int n = matrix.length;
        lower = new double[n][];
        for (int i = 0; i < n; i++) {
            lower[i] = new double[i + 1];
            for (int j = 0; j <= i; j++) {
                double rest = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    rest -= lower[i][k] * lower[j][k];
                }
                if (i == j && !(rest > 0)) {
                    throw new IllegalArgumentException("the matrix is not positive definite");
                }
                lower[i][j] = i == j ? Math.sqrt(rest) : rest / lower[j][j];
            }
        }
    }

    /** The unknowns for a right-hand side. */
    public double[] solve(double[] right) {
        int n = lower.length;
        double[] x = right.clone();
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < i; k++) {
                x[i] -= lower[i][k] * x[k];
            }
            x[i] /= lower[i][i];
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int k = i + 1; k < n; k++) {
                x[i] -= lower[k][i] * x[k];
            }
            x[i] /= lower[i][i];
        }
        return x;
    }
}
