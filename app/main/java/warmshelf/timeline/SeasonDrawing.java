package warmshelf.timeline;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import warmshelf.timeline.SeasonPicture.Bar;
import warmshelf.timeline.SeasonPicture.Head;
import warmshelf.timeline.SeasonPicture.Mark;
import warmshelf.timeline.SeasonPicture.Row;
import warmshelf.timeline.SeasonPicture.Shade;

/** Works out where everything of a season is drawn. */
final class SeasonDrawing {
    private static final int DAY = SeasonPicture.DAY;
    /** So far back today is still shown before the first sowing begins. */
    private static final int DAYS_BEFORE = 28;
    /** Room that a letter of a bar's label takes. */
    private static final int LETTER = 7;

    private final List<Growing> sowings;
    private final List<FrostRisk> frost;
    private final LocalDate today;
    private final LocalDate from;
    private final LocalDate to;

    /**
     * Each of the sowings has something to draw.
     *
     * @param frostUntil the shades behind, up to a day
     */
    SeasonDrawing(List<Growing> sowings, Function<LocalDate, List<FrostRisk>> frostUntil, LocalDate today) {
        this.sowings = sowings.stream()
                .sorted(Comparator.comparing(
                        (Growing growing) -> growing.first().orElseThrow()))
                .toList();
        this.today = today;
        LocalDate first = this.sowings.get(0).first().orElseThrow();
        LocalDate begin = today.isBefore(first) && !today.isBefore(first.minusDays(DAYS_BEFORE)) ? today : first;
        this.from = begin.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        this.to = end().with(TemporalAdjusters.next(DayOfWeek.MONDAY));
        this.frost = frostUntil.apply(to);
    }

    private LocalDate end() {
        Stream<LocalDate> stays = sowings.stream()
                .flatMap(growing -> growing.stretches().stream())
                .map(Growing.Stretch::to);
        Stream<LocalDate> steps =
                sowings.stream().flatMap(growing -> growing.marked().stream()).map(Growing::dayOf);
        return Stream.concat(stays, steps).max(LocalDate::compareTo).orElseThrow();
    }

    SeasonPicture draw() {
        List<Row> rows = new ArrayList<>();
        for (Growing growing : sowings) {
            rows.add(row(growing, SeasonPicture.HEAD + rows.size() * SeasonPicture.ROW));
        }
        return new SeasonPicture(
                from,
                to,
                x(to),
                SeasonPicture.HEAD + rows.size() * SeasonPicture.ROW,
                today.isBefore(from) || !today.isBefore(to) ? null : Integer.valueOf(x(today) + DAY / 2),
                months(),
                mondays(),
                shades(),
                rows);
    }

    private Row row(Growing growing, int y) {
        TimelineStep next = growing.next().orElse(null);
        List<Bar> bars = growing.stretches().stream()
                .map(stretch -> bar(growing, stretch))
                .toList();
        List<Mark> marks = growing.marked().stream()
                .map(step -> mark(step, step.equals(next)))
                .toList();
        return new Row(growing.id(), growing.crop(), growing.variety(), y, bars, marks);
    }

    private Bar bar(Growing growing, Growing.Stretch stretch) {
        Phase phase = stretch.phase();
        int width = x(stretch.to()) - x(stretch.from());
        String label = phase.label().length() * LETTER + 6 <= width ? phase.label() : "";
        String style = phase == Phase.HEAT ? "heat-" + warmth(growing.celsius()) : phase.word();
        return new Bar(
                style, label, x(stretch.from()), width, phase.words(), stretch.from(), stretch.to(), stretch.open());
    }

    /** The steps of the scale of warmth, as everywhere. */
    private static String warmth(int celsius) {
        if (celsius < 22) {
            return "cool";
        }
        if (celsius < 26) {
            return "warm";
        }
        return celsius < 30 ? "hot" : "very-hot";
    }

    private Mark mark(TimelineStep step, boolean next) {
        LocalDate day = Growing.dayOf(step);
        return new Mark(x(day) + DAY / 2, step.done() != null, next, step.step().title(), day);
    }

    private List<Head> months() {
        List<Head> months = new ArrayList<>();
        months.add(month(from));
        for (LocalDate first = from.plusMonths(1).withDayOfMonth(1); first.isBefore(to); first = first.plusMonths(1)) {
            months.add(month(first));
        }
        // the name of a month of which few days are left would run into the next one's
        if (months.size() > 1 && months.get(1).x() < 5 * DAY) {
            months.remove(0);
        }
        return months;
    }

    private Head month(LocalDate day) {
        return new Head(x(day), day.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH));
    }

    private List<Head> mondays() {
        return from.datesUntil(to, java.time.Period.ofWeeks(1))
                .map(monday -> new Head(x(monday), String.valueOf(monday.getDayOfMonth())))
                .toList();
    }

    private List<Shade> shades() {
        List<Shade> shades = new ArrayList<>();
        LocalDate drawn = from;
        for (FrostRisk risk : frost) {
            LocalDate begin = risk.from().isBefore(drawn) ? drawn : risk.from();
            LocalDate end = risk.to().isAfter(to) ? to : risk.to();
            if (begin.isBefore(end)) {
                shades.add(new Shade(x(begin), x(end) - x(begin), risk));
                drawn = end;
            }
        }
        return shades;
    }

    private int x(LocalDate day) {
        return (int) ChronoUnit.DAYS.between(from, day) * DAY;
    }
}
