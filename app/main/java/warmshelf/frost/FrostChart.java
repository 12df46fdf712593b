package warmshelf.frost;

import static warmshelf.frost.FrostSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import warmshelf.words.DayWords;
import warmshelf.words.Numbers;

/**
 * A drawing of the chance of frost day by day, in the units of a box 420 wide and 260 high, small enough for its words to stay legible on a phone. Every figure is text already,
 * so that the page only sets it down.
 *
 * @param line the curve as points of a polyline
 * @param area the same closed along the bottom
 * @param description the drawing in words, for those who do not see it
 */
public record FrostChart(
        String title,
        String description,
        String line,
        String area,
        List<Tick> days,
        List<Tick> chances,
        List<Mark> marks) {

    private static final double LEFT = 48;
    private static final double RIGHT = 408;
    private static final double TOP = 16;
    private static final double BOTTOM = 218;
    private static final double SPREADS_SHOWN = 2.6;
    private static final int MOST_TICKS = 6;

    /** A line of the grid: how far along its axis, and its words. */
    public record Tick(String at, String words) {}

    /** A point of the curve worth reading off. */
    public record Mark(String x, String y, String textX, String textY, String anchor, String words) {}

    /** The chance that a spring still has a frost after each day. */
    static FrostChart spring(FrostSeason season, int year) {
        return new Drawing(season, year, season::chanceAfter).chart(SAY.springChart(), true, season::dayExceededWith);
    }

    /** The chance that an autumn already had a frost before each day. */
    static FrostChart autumn(FrostSeason season, int year) {
        return new Drawing(season, year, season::chanceBefore).chart(SAY.autumnChart(), false, season::dayReachedWith);
    }

    private interface DayAtChance {
        OptionalDouble of(double chance);
    }

    private static final class Drawing {
        private final int year;
        private final DoubleUnaryOperator chance;
        private final double firstDay;
        private final double lastDay;

        Drawing(FrostSeason season, int year, DoubleUnaryOperator chance) {
            this.year = year;
            this.chance = chance;
            this.firstDay = Math.floor(season.medianDay() - SPREADS_SHOWN * season.sdDays());
            this.lastDay = Math.ceil(season.medianDay() + SPREADS_SHOWN * season.sdDays());
        }

        /** @param falling whether the chance falls from day to day, as that of one more frost in spring does */
        FrostChart chart(String title, boolean falling, DayAtChance dayAt) {
            List<String> points = new ArrayList<>();
            for (double day = firstDay; day <= lastDay; day++) {
                points.add(Numbers.oneDecimal(x(day)) + "," + Numbers.oneDecimal(y(chance.applyAsDouble(day))));
            }
            String line = String.join(" ", points);
            String area = Numbers.oneDecimal(LEFT) + "," + Numbers.oneDecimal(BOTTOM) + " " + line + " "
                    + Numbers.oneDecimal(x(lastDay)) + "," + Numbers.oneDecimal(BOTTOM);
            List<String> readings = new ArrayList<>();
            List<Mark> marks = new ArrayList<>();
            for (int percent : new int[] {50, 30, 10}) {
                OptionalDouble day = dayAt.of(percent / 100.0);
                if (day.isPresent()) {
                    String words = words(day.getAsDouble());
                    readings.add(falling ? SAY.percentAfter(percent, words) : SAY.percentBefore(percent, words));
                    marks.add(mark(day.getAsDouble(), percent, falling));
                }
            }
            String description = readings.isEmpty() ? SAY.hardlyAnyChance() : String.join(", ", readings) + ".";
            return new FrostChart(title, description, line, area, days(), chances(), marks);
        }

        /** A falling curve has room to the right of its points, a rising one to the left. */
        private Mark mark(double day, int percent, boolean falling) {
            double height = y(percent / 100.0);
            double aside = falling ? 8 : -8;
            return new Mark(
                    Numbers.oneDecimal(x(day)),
                    Numbers.oneDecimal(height),
                    Numbers.oneDecimal(x(day) + aside),
                    Numbers.oneDecimal(height - 6),
                    falling ? "start" : "end",
                    percent + " %: " + words(day));
        }

        private List<Tick> days() {
            List<Tick> ticks = new ArrayList<>();
            int weeks = 1 + (int) ((lastDay - firstDay) / 7 / MOST_TICKS);
            for (double day = firstDay + 3; day < lastDay - 3; day += 7 * weeks) {
                ticks.add(new Tick(Numbers.oneDecimal(x(day)), words(day)));
            }
            return ticks;
        }

        private List<Tick> chances() {
            List<Tick> ticks = new ArrayList<>();
            for (int percent = 0; percent <= 100; percent += 25) {
                ticks.add(new Tick(Numbers.oneDecimal(y(percent / 100.0)), percent + " %"));
            }
            return ticks;
        }

        private String words(double day) {
            LocalDate date = YearDay.in(year, day);
            return DayWords.date(date);
        }

        private double x(double day) {
            return LEFT + (RIGHT - LEFT) * (day - firstDay) / (lastDay - firstDay);
        }
    }

    private static double y(double share) {
        return BOTTOM - (BOTTOM - TOP) * share;
    }
}
