package warmshelf.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Slot;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.SetPointSpan;
import warmshelf.words.DayWords;

/**
 * The plan drawn: for each mat, and each lit shelf, its places down, days across, in CSS pixels. What is proposed carries a mark and a dashed edge,
 * what is published has a plain one.
 */
public record PlanPicture(int width, int height, List<Week> weeks, List<Band> bands) {
    /** What a wide page leaves beside the names of the mats. */
    private static final int WIDTH = 1092;

    private static final int NARROWEST_DAY = 8;
    private static final int WIDEST_DAY = 28;
    private static final int QUARTER = 9;
    /** Below this height a bar has no room for letters; its words are its title. */
    private static final int LETTERED = 14;

    private static final int TITLE = 22;
    private static final int GAP = 10;
    private static final int LEAST_DAYS = 28;
    private static final int MOST_DAYS = 200;
    private static final double LETTER = 6.4;

    /** A Monday. */
    public record Week(int x, LocalDate monday) {}

    /**
     * A mat: its set-points in a strip on top, its places below; or a lit shelf, which has no set-points.
     *
     * @param matId null for a lit shelf
     */
    public record Band(String name, @Nullable UUID matId, int y, int height, List<Warm> warm, List<Row> rows) {}

    /** Days at one set-point. */
    public record Warm(int x, int width, double celsius, String style) {}

    /** A place. */
    public record Row(int number, int y, int height, List<Bar> bars) {}

    /** A stay; {@code words} say all of it. */
    public record Bar(int x, int y, int width, int height, boolean proposed, String text, String words) {}

    static PlanPicture of(PlanDraft draft, List<SeasonQuestion.Surface> surfaces) {
        LocalDate from = draft.asked().today();
        int days = LEAST_DAYS;
        for (SetPointSpan span : draft.plan().setPoints()) {
            days = Math.max(days, (int) (span.days().to().toEpochDay() - from.toEpochDay()));
        }
        for (PlacedStay stay : draft.plan().placed()) {
            if (stay.light() != null) {
                days = Math.max(days, (int) (stay.light().days().to().toEpochDay() - from.toEpochDay()));
            }
        }
        int drawn = Math.min(days, MOST_DAYS);
        int day = Math.max(NARROWEST_DAY, Math.min(WIDEST_DAY, WIDTH / drawn));
        return new Drawing(draft, from, drawn, day).draw(surfaces);
    }

    /** @param day how wide a day is drawn */
    private record Drawing(PlanDraft draft, LocalDate from, int days, int day) {
        PlanPicture draw(List<SeasonQuestion.Surface> surfaces) {
            List<Band> bands = new ArrayList<>();
            int y = 0;
            for (SeasonQuestion.Surface surface : surfaces) {
                Band band = band(surface, y);
                bands.add(band);
                y += band.height() + GAP;
            }
            List<Week> weeks = IntStream.range(0, days)
                    .filter(index -> from.plusDays(index).getDayOfWeek() == DayOfWeek.MONDAY)
                    .mapToObj(index -> new Week(index * day, from.plusDays(index)))
                    .toList();
            return new PlanPicture(days * day, y, weeks, bands);
        }

        private Band band(SeasonQuestion.Surface surface, int top) {
            List<Row> rows = new ArrayList<>();
            int y = top + TITLE;
            for (int place = 1; place <= surface.places(); place++) {
                Row row = row(surface, place, y);
                rows.add(row);
                y += row.height();
            }
            List<Warm> warm = draft.plan().setPoints().stream()
                    .filter(span -> !surface.lit()
                            && span.mat().equals(surface.name())
                            && x(span.days().to()) > x(span.days().from()))
                    .map(span -> new Warm(
                            x(span.days().from()),
                            x(span.days().to()) - x(span.days().from()),
                            span.celsius(),
                            style(span.celsius())))
                    .toList();
            return new Band(
                    surface.lit() ? litName(surface.name()) : surface.name(),
                    surface.matId(),
                    top,
                    y - top,
                    warm,
                    rows);
        }

        /** 'light North 2' for the second shelf of the rack North: as much as the names' column holds. */
        private static String litName(String name) {
            String[] parts = name.split(" · ", -1);
            String rack = parts.length > 1 ? parts[1] : "";
            String shelf = name.substring(name.lastIndexOf(' ') + 1);
            return "light %s %s".formatted(rack.length() <= 6 ? rack : rack.substring(0, 5) + "…", shelf);
        }

        private Row row(SeasonQuestion.Surface surface, int place, int y) {
            List<Bar> bars = new ArrayList<>();
            draft.asked().lying().values().stream()
                    .filter(lying -> surface.holds(lying) && lying.place() == place)
                    .forEach(lying -> bars.add(bar(
                            y,
                            lying.stay().slot(),
                            lying.stay().from(),
                            lying.stay().to(),
                            false,
                            lying.title())));
            for (PlacedStay stay : draft.plan().placed()) {
                PlanView.Laid laid = PlanView.Laid.on(surface, stay);
                if (laid != null && laid.place() == place) {
                    bars.add(bar(
                            y,
                            laid.slot(),
                            laid.days().from(),
                            laid.days().to(),
                            true,
                            PlanView.title(draft, stay.request())));
                }
            }
            return new Row(place, y, 4 * QUARTER, bars);
        }

        private Bar bar(int rowY, Slot slot, LocalDate first, LocalDate afterLast, boolean proposed, String title) {
            int width = Math.max(4, x(afterLast) - x(first) - 2);
            int height = slot.quarters() * QUARTER - 2;
            String mark = proposed ? "◇ " : "";
            String words = "%s: %s, %s, %s"
                    .formatted(
                            proposed ? "proposed" : "published", title, slot.words(), DayWords.span(first, afterLast));
            return new Bar(
                    x(first) + 1,
                    rowY + (slot.firstQuarter() - 1) * QUARTER + 1,
                    width,
                    height,
                    proposed,
                    height < LETTERED ? "" : fit(mark + title, width - 8),
                    words);
        }

        private static String fit(String text, int width) {
            int letters = (int) (width / LETTER);
            if (text.length() <= letters) {
                return text;
            }
            return letters < 2 ? "" : text.substring(0, letters - 1) + "…";
        }

        private int x(LocalDate date) {
            long index = date.toEpochDay() - from.toEpochDay();
            return (int) Math.max(0, Math.min(days, index)) * day;
        }

        private static String style(double celsius) {
            return warmshelf.shelf.WarmScale.of(celsius).style();
        }
    }
}
