package warmshelf.allocation.plan.solver;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.StringTokenizer;

/**
 * Whole numbers to be chosen so that a weighted sum is greatest while other weighted sums stay at or below their limits.
 * Written and read as lines of numbers, one a number or row.
 */
public final class IntegerProgram {
    /** A whole number from 0 to {@code most}; {@code hint} is its value in a plan already known. */
    record Number(int most, int weight, int hint) {}

    /** The sum of factor times number is at most {@code limit}; exactly so when {@code equal}. */
    record Row(boolean equal, long limit, int[] numbers, int[] factors) {}

    private final List<Number> numbers = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();

    /** Adds a number and says its index. */
    public int number(int most, int weight, int hint) {
        numbers.add(new Number(most, weight, hint));
        return numbers.size() - 1;
    }

    public void atMost(long limit, Sum sum) {
        add(false, limit, sum);
    }

    public void exactly(long value, Sum sum) {
        add(true, value, sum);
    }

    List<Number> numbers() {
        return numbers;
    }

    List<Row> rows() {
        return rows;
    }

    private void add(boolean equal, long limit, Sum sum) {
        if (!sum.numbers.isEmpty()) {
            rows.add(new Row(equal, limit, ints(sum.numbers), ints(sum.factors)));
        }
    }

    private static int[] ints(List<Integer> values) {
        return values.stream().mapToInt(value -> value).toArray();
    }

    void write(PrintStream out) {
        out.println(numbers.size() + " " + rows.size());
        numbers.forEach(number -> out.println(number.most() + " " + number.weight() + " " + number.hint()));
        for (Row row : rows) {
            StringBuilder line = new StringBuilder();
            line.append(row.equal() ? 1 : 0).append(' ').append(row.limit());
            for (int i = 0; i < row.numbers().length; i++) {
                line.append(' ').append(row.numbers()[i]).append(' ').append(row.factors()[i]);
            }
            out.println(line);
        }
        out.flush();
    }

    static IntegerProgram read(BufferedReader in) throws IOException {
        IntegerProgram program = new IntegerProgram();
        StringTokenizer head = new StringTokenizer(line(in));
        int numbers = Integer.parseInt(head.nextToken());
        int rows = Integer.parseInt(head.nextToken());
        for (int i = 0; i < numbers; i++) {
            StringTokenizer words = new StringTokenizer(line(in));
            program.number(next(words), next(words), next(words));
        }
        for (int i = 0; i < rows; i++) {
            StringTokenizer words = new StringTokenizer(line(in));
            boolean equal = next(words) == 1;
            long limit = Long.parseLong(words.nextToken());
            Sum sum = new Sum();
            while (words.hasMoreTokens()) {
                sum.add(next(words), next(words));
            }
            program.add(equal, limit, sum);
        }
        return program;
    }

    private static int next(StringTokenizer words) {
        return Integer.parseInt(words.nextToken());
    }

    private static String line(BufferedReader in) throws IOException {
        String line = in.readLine();
        if (line == null) {
            throw new IOException("the program ends too soon");
        }
        return line;
    }

    /** A weighted sum in the making. */
    public static final class Sum {
        private final List<Integer> numbers = new ArrayList<>();
        private final List<Integer> factors = new ArrayList<>();

        /** Adds another sum a number of times. */
        public void addAll(Sum other, int times) {
            for (int i = 0; i < other.numbers.size(); i++) {
                add(other.numbers.get(i), times * other.factors.get(i));
            }
        }

        public Sum add(int number, int factor) {
            numbers.add(number);
            factors.add(factor);
            return this;
        }
    }
}
