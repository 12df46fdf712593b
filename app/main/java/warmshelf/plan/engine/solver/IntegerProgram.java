package warmshelf.plan.engine.solver;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.StringTokenizer;

/**
 * Whole numbers to be chosen so that a weighted sum is greatest while other weighted sums stay at or below their limits, and
 * while stretches of days that share a room never take more of it than there is. Written and read as lines of numbers.
 */
public final class IntegerProgram {
    /** A whole number from 0 to {@code most}; {@code hint} is its value in a plan already known. */
    record Quantity(int most, int weight, int hint) {}

    /** The sum of factor times number is at most {@code limit}; exactly so when {@code equal}. */
    // An array for its speed; no two are ever compared.
    @SuppressWarnings("ArrayRecordComponent")
    record Row(boolean equal, long limit, int[] numbers, int[] factors) {}

    /** So many days from the day in the number {@code first}, one of {@code firsts}; there when {@code present} is 1. */
    // An array for its speed; no two are ever compared.
    @SuppressWarnings("ArrayRecordComponent")
    record Stretch(int first, int present, int days, int[] firsts) {}

    /** On no day do the stretches there take more than {@code capacity} together. */
    // An array for its speed; no two are ever compared.
    @SuppressWarnings("ArrayRecordComponent")
    record Room(int capacity, int[] stretches, int[] sizes) {}

    private final List<Quantity> numbers = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    private final List<Stretch> stretches = new ArrayList<>();
    private final List<Room> rooms = new ArrayList<>();

    /** Adds a number and says its index. */
    public int number(int most, int weight, int hint) {
        numbers.add(new Quantity(most, weight, hint));
        return numbers.size() - 1;
    }

    public void atMost(long limit, Sum sum) {
        add(false, limit, sum);
    }

    public void exactly(long value, Sum sum) {
        add(true, value, sum);
    }

    /** Adds a stretch of days and says its index among the stretches. */
    public int stretch(int first, int present, int days, List<Integer> firsts) {
        stretches.add(new Stretch(first, present, days, ints(firsts)));
        return stretches.size() - 1;
    }

    /** Adds a room; the sum is over stretches, its factors are their sizes. */
    public void room(int capacity, Sum sizes) {
        if (!sizes.numbers.isEmpty()) {
            rooms.add(new Room(capacity, ints(sizes.numbers), ints(sizes.factors)));
        }
    }

    List<Stretch> stretches() {
        return stretches;
    }

    List<Room> rooms() {
        return rooms;
    }

    List<Quantity> numbers() {
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
        out.println(numbers.size() + " " + rows.size() + " " + stretches.size() + " " + rooms.size());
        numbers.forEach(number -> out.println(number.most() + " " + number.weight() + " " + number.hint()));
        rows.forEach(
                row -> out.println((row.equal() ? 1 : 0) + " " + row.limit() + pairs(row.numbers(), row.factors())));
        for (Stretch stretch : stretches) {
            StringBuilder line = new StringBuilder();
            line.append(stretch.first()).append(' ').append(stretch.present());
            line.append(' ').append(stretch.days());
            for (int first : stretch.firsts()) {
                line.append(' ').append(first);
            }
            out.println(line);
        }
        rooms.forEach(room -> out.println(room.capacity() + pairs(room.stretches(), room.sizes())));
        out.flush();
    }

    private static String pairs(int[] numbers, int[] factors) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < numbers.length; i++) {
            line.append(' ').append(numbers[i]).append(' ').append(factors[i]);
        }
        return line.toString();
    }

    static IntegerProgram read(BufferedReader in) throws IOException {
        IntegerProgram program = new IntegerProgram();
        StringTokenizer head = new StringTokenizer(line(in));
        int numbers = next(head);
        int rows = next(head);
        int stretches = next(head);
        int rooms = next(head);
        for (int i = 0; i < numbers; i++) {
            StringTokenizer words = new StringTokenizer(line(in));
            program.number(next(words), next(words), next(words));
        }
        for (int i = 0; i < rows; i++) {
            StringTokenizer words = new StringTokenizer(line(in));
            boolean equal = next(words) == 1;
            program.add(equal, Long.parseLong(words.nextToken()), sum(words));
        }
        for (int i = 0; i < stretches; i++) {
            StringTokenizer words = new StringTokenizer(line(in));
            List<Integer> firsts = new ArrayList<>();
            int first = next(words);
            int present = next(words);
            int days = next(words);
            while (words.hasMoreTokens()) {
                firsts.add(next(words));
            }
            program.stretch(first, present, days, firsts);
        }
        for (int i = 0; i < rooms; i++) {
            StringTokenizer words = new StringTokenizer(line(in));
            program.room(next(words), sum(words));
        }
        return program;
    }

    private static Sum sum(StringTokenizer words) {
        Sum sum = new Sum();
        while (words.hasMoreTokens()) {
            sum.add(next(words), next(words));
        }
        return sum;
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
