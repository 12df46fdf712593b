package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import warmshelf.frost.Threshold;
import warmshelf.words.DayWords;
import warmshelf.words.Degrees;
import warmshelf.words.Numbers;
import warmshelf.words.Units;

/**
 * A drawing of a month of nights, in the units of a box 420 wide and 200 high, with the line of freezing across it. Every
 * figure is text already, so that the page only sets it down.
 *
 * @param description the drawing in words, for those who do not see it
 * @param runs the nights as points of polylines, one for each run without a missing night
 * @param freezing the line of 0 °C
 */
public record NightsChart(
        String description, List<String> runs, List<Dot> dots, Line freezing, List<Line> levels, List<Line> days) {

    private static final double LEFT = 62;
    private static final double RIGHT = 408;
    private static final double TOP = 14;
    private static final double BOTTOM = 168;
    private static final double ROOM_C = 2;
    private static final double ROOM_FOR_WORDS = 15;
    private static final int DAYS_BETWEEN_WORDS = 7;

    /** A night's place. */
    public record Dot(String x, String y) {}

    /** A line of the grid: how far along its axis, and its words. */
    public record Line(String at, String words) {}

    /** The nights of some days, both ends included; at least one night lies between them. */
    static NightsChart of(List<Night> nights, LocalDate first, LocalDate last, Units units) {
        return new Drawing(nights, first, last, units).chart();
    }

    private static final class Drawing {
        private final List<Night> nights;
        private final LocalDate first;
        private final LocalDate last;
        private final Units units;
        private final double coldest;
        private final double warmest;

        Drawing(List<Night> nights, LocalDate first, LocalDate last, Units units) {
            this.nights =
                    nights.stream().sorted(Comparator.comparing(Night::day)).toList();
            this.first = first;
            this.last = last;
            this.units = units;
            this.coldest = Math.min(
                    0, nights.stream().mapToDouble(Night::celsius).min().orElseThrow());
            this.warmest = Math.max(
                    0, nights.stream().mapToDouble(Night::celsius).max().orElseThrow());
        }

        NightsChart chart() {
            List<Dot> dots = nights.stream()
                    .map(night -> new Dot(x(night.day()), y(night.celsius())))
                    .toList();
            List<Line> levels = new ArrayList<>();
            for (double level : new double[] {coldest, warmest}) {
                if (Math.abs(height(level) - height(0)) >= ROOM_FOR_WORDS) {
                    levels.add(new Line(y(level), Degrees.words(level, units)));
                }
            }
            List<Line> days = new ArrayList<>();
            for (LocalDate day = last; !day.isBefore(first); day = day.minusDays(DAYS_BETWEEN_WORDS)) {
                days.add(new Line(x(day), DayWords.date(day)));
            }
            return new NightsChart(description(), runs(), dots, new Line(y(0), Degrees.words(0, units)), levels, days);
        }

        private String description() {
            Night lowest = nights.stream()
                    .min(Comparator.comparingDouble(Night::celsius))
                    .orElseThrow();
            long frosts = nights.stream()
                    .filter(night -> night.celsius() <= Threshold.FROST.celsius())
                    .count();
            return SAY.chart(
                    nights.size(),
                    DayWords.date(first),
                    DayWords.date(last),
                    (int) frosts,
                    Degrees.words(lowest.celsius(), units),
                    DayWords.date(lowest.day()));
        }

        private List<String> runs() {
            List<String> runs = new ArrayList<>();
            StringBuilder run = new StringBuilder();
            LocalDate before = null;
            for (Night night : nights) {
                if (before != null && !night.day().equals(before.plusDays(1))) {
                    runs.add(run.toString());
                    run.setLength(0);
                }
                run.append(run.isEmpty() ? "" : " ")
                        .append(x(night.day()))
                        .append(',')
                        .append(y(night.celsius()));
                before = night.day();
            }
            runs.add(run.toString());
            return runs;
        }

        private String x(LocalDate day) {
            double share =
                    ChronoUnit.DAYS.between(first, day) / (double) Math.max(1, ChronoUnit.DAYS.between(first, last));
            return Numbers.oneDecimal(LEFT + (RIGHT - LEFT) * share);
        }

        private String y(double celsius) {
            return Numbers.oneDecimal(height(celsius));
        }

        private double height(double celsius) {
            double share = (celsius - coldest + ROOM_C) / (warmest - coldest + 2 * ROOM_C);
            return BOTTOM - (BOTTOM - TOP) * share;
        }
    }
}
