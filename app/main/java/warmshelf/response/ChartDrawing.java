package warmshelf.response;

import static warmshelf.response.ResponseSentences.SAY;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import warmshelf.crop.CelsiusRange;
import warmshelf.crop.Emergence;
import warmshelf.crop.LearnedEmergence;
import warmshelf.crop.LearnedWords;
import warmshelf.crop.Method;
import warmshelf.crop.SeenEmergence;
import warmshelf.crop.TemperatureResponse;
import warmshelf.words.Numbers;
import warmshelf.words.Units;

/** Draws a crop's response to temperature, with the group's sowings on it. */
final class ChartDrawing {
    private static final double LEFT = 44;
    private static final double RIGHT = 408;
    private static final double TOP = 14;
    private static final double BOTTOM = 226;
    private static final double ROOM_C = 2;
    private static final double STEP_C = 0.5;
    /** Cold seed can need months; what is slower than so many times the fastest is left out, so that the rest can be read. */
    private static final double SLOWEST_DRAWN = 4;

    private static final int MOST_TICKS = 6;

    private final TemperatureResponse response;
    private final LearnedEmergence learned;
    private final List<SeenEmergence> seen;
    private final Units units;
    private final double lowC;
    private final double highC;
    private final double mostDays;

    ChartDrawing(TemperatureResponse response, LearnedEmergence learned, List<SeenEmergence> seen, Units units) {
        this.response = response;
        this.learned = learned;
        this.seen = seen;
        this.units = units;
        this.lowC = response.timed().low() - ROOM_C;
        this.highC = response.timed().high() + ROOM_C;
        double fastest = curve().stream().mapToDouble(At::days).min().orElseThrow();
        double slowestCurve = curve().stream().mapToDouble(At::days).max().orElseThrow();
        double slowestSeen =
                seen.stream().mapToDouble(SeenEmergence::seedlingDays).max().orElse(0);
        this.mostDays = Math.ceil(1.1
                * Math.max(slowestSeen, Math.max(1.75 * fastest, Math.min(slowestCurve, SLOWEST_DRAWN * fastest))));
    }

    private record At(double celsius, Emergence emergence) {
        double days() {
            return emergence.days();
        }
    }

    ResponseChart chart() {
        CelsiusRange comfortable = response.comfortable();
        return new ResponseChart(
                description(),
                new ResponseChart.Stretch(
                        Numbers.oneDecimal(x(comfortable.low())),
                        Numbers.oneDecimal(Math.max(2, x(comfortable.high()) - x(comfortable.low())))),
                spread(),
                line(Emergence::days),
                learned.counts() ? line(days -> learned.factor() * days.days()) : "",
                temperatures(),
                days(),
                seen.stream().map(this::dot).toList());
    }

    private String description() {
        List<String> readings = new ArrayList<>();
        for (ResponseChart.Tick tick : readable()) {
            readings.add(SAY.daysAt(tick.at(), tick.words()));
        }
        String table = String.join(", ", readings);
        return seen.isEmpty() ? SAY.publishedDays(table) : SAY.publishedDaysAndDots(table, seen.size());
    }

    /** Days and temperature at the ends and in the middle of the curve. */
    private List<ResponseChart.Tick> readable() {
        CelsiusRange range = response.timed();
        return DoubleStream.of(range.low(), response.bestC(), range.high())
                .distinct()
                .mapToObj(celsius -> new ResponseChart.Tick(
                        LearnedWords.days(response.at(celsius).orElseThrow().days()), units.temperature(celsius)))
                .toList();
    }

    private List<At> curve() {
        List<At> points = new ArrayList<>();
        CelsiusRange range = response.timed();
        for (double celsius = range.low(); celsius < range.high(); celsius += STEP_C) {
            add(points, celsius);
        }
        add(points, range.high());
        return points;
    }

    private void add(List<At> points, double celsius) {
        response.at(celsius).ifPresent(emergence -> points.add(new At(celsius, emergence)));
    }

    private String line(ToDoubleFunction<Emergence> days) {
        return String.join(
                " ",
                curve().stream()
                        .filter(at -> days.applyAsDouble(at.emergence()) <= mostDays)
                        .map(at -> point(at.celsius(), days.applyAsDouble(at.emergence())))
                        .toList());
    }

    private String spread() {
        List<At> drawn = curve().stream().filter(at -> at.days() <= mostDays).toList();
        List<String> points = new ArrayList<>();
        drawn.forEach(at ->
                points.add(point(at.celsius(), Math.min(mostDays, at.emergence().days95()))));
        List<At> back = new ArrayList<>(drawn);
        Collections.reverse(back);
        back.forEach(at -> points.add(point(at.celsius(), at.emergence().days5())));
        return String.join(" ", points);
    }

    private ResponseChart.Dot dot(SeenEmergence sowing) {
        boolean bag = sowing.method() == Method.BAG;
        return new ResponseChart.Dot(
                Numbers.oneDecimal(x(sowing.celsius())),
                Numbers.oneDecimal(y(sowing.seedlingDays())),
                bag,
                bag
                        ? SAY.dotFromBag(LearnedWords.days(sowing.seedlingDays()), units.temperature(sowing.celsius()))
                        : SAY.dot(LearnedWords.days(sowing.seedlingDays()), units.temperature(sowing.celsius())));
    }

    private List<ResponseChart.Tick> temperatures() {
        int step = units.inFahrenheit() ? 10 : 5;
        List<ResponseChart.Tick> ticks = new ArrayList<>();
        for (int degrees = -20; degrees <= 130; degrees += step) {
            double celsius = units.temperature().toCelsius(degrees);
            if (celsius >= lowC && celsius <= highC) {
                ticks.add(new ResponseChart.Tick(Numbers.oneDecimal(x(celsius)), String.valueOf(degrees)));
            }
        }
        return ticks;
    }

    private List<ResponseChart.Tick> days() {
        int step = 1;
        for (int wider : new int[] {2, 5, 10, 20, 50}) {
            step = mostDays / step > MOST_TICKS ? wider : step;
        }
        List<ResponseChart.Tick> ticks = new ArrayList<>();
        for (int day = 0; day <= mostDays; day += step) {
            ticks.add(new ResponseChart.Tick(Numbers.oneDecimal(y(day)), String.valueOf(day)));
        }
        return ticks;
    }

    private String point(double celsius, double days) {
        return Numbers.oneDecimal(x(celsius)) + "," + Numbers.oneDecimal(y(days));
    }

    private double x(double celsius) {
        return LEFT + (RIGHT - LEFT) * (celsius - lowC) / (highC - lowC);
    }

    private double y(double days) {
        return BOTTOM - (BOTTOM - TOP) * days / mostDays;
    }
}
