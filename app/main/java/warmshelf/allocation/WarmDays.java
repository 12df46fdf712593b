package warmshelf.allocation;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import warmshelf.words.Numbers;

/**
 * The set-points of a mat for days in a row.
 *
 * @param celsius one set-point a day, to a tenth of a degree; the first is of the first day
 */
public record WarmDays(LocalDate from, List<Double> celsius) {
    private static final Pattern KEY = Pattern.compile("RUN(,RUN){0,99}".replace("RUN", "\\d{1,2}(\\.\\d)?x\\d{1,3}"));

    public WarmDays {
        if (celsius.isEmpty()) {
            throw new IllegalArgumentException("a stay on a mat lasts at least a day");
        }
        celsius = List.copyOf(celsius);
    }

    /** Days in a row at one set-point; {@code to} is the day after the last. */
    public record Run(LocalDate from, LocalDate to, double celsius) {}

    /** One set-point from one day up to but not on another. */
    public static WarmDays throughout(LocalDate from, LocalDate to, double celsius) {
        return new WarmDays(from, Collections.nCopies((int) ChronoUnit.DAYS.between(from, to), celsius));
    }

    /** The day after the last. */
    public LocalDate to() {
        return from.plusDays(celsius.size());
    }

    /** The set-point of one of the days. */
    public double on(LocalDate day) {
        return celsius.get((int) ChronoUnit.DAYS.between(from, day));
    }

    public double first() {
        return celsius.get(0);
    }

    public double last() {
        return celsius.get(celsius.size() - 1);
    }

    /** Whether both have the same set-point on every day that they share. */
    public boolean agreesWith(WarmDays other) {
        LocalDate first = from.isBefore(other.from) ? other.from : from;
        LocalDate afterLast = to().isBefore(other.to()) ? to() : other.to();
        return !first.isBefore(afterLast) || first.datesUntil(afterLast).allMatch(day -> on(day) == other.on(day));
    }

    /** Equal days joined, in order. */
    public List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        for (int day = 0; day < celsius.size(); day++) {
            LocalDate next = from.plusDays(day + 1L);
            Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
            if (last != null && last.celsius() == celsius.get(day)) {
                runs.set(runs.size() - 1, new Run(last.from(), next, last.celsius()));
            } else {
                runs.add(new Run(from.plusDays(day), next, celsius.get(day)));
            }
        }
        return runs;
    }

    /** What a form sends to say these set-points again: '26x5,27.2x3' is five days at 26 °C and three at 27.2 °C. */
    public String key() {
        return runs().stream()
                .map(run -> written(run.celsius()) + "x" + ChronoUnit.DAYS.between(run.from(), run.to()))
                .collect(Collectors.joining(","));
    }

    /** A set-point in figures: '26', or '27.2'. */
    public static String written(double celsius) {
        return Numbers.plain(celsius);
    }

    /** The set-points that a form sends; empty when it is none. */
    public static Optional<WarmDays> ofKey(LocalDate from, String key) {
        if (!KEY.matcher(key).matches()) {
            return Optional.empty();
        }
        List<Double> celsius = Stream.of(key.split(","))
                .map(run -> run.split("x"))
                .flatMap(run -> Collections.nCopies(Integer.parseInt(run[1]), Double.parseDouble(run[0])).stream())
                .toList();
        return celsius.isEmpty() ? Optional.empty() : Optional.of(new WarmDays(from, celsius));
    }
}
