package warmshelf.timeline;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.FrostClimate;

/**
 * A member's season drawn: days across, a row for each sowing. All places are in pixels of its own size.
 *
 * @param from the first day drawn, a Monday
 * @param to the day after the last one drawn
 * @param todayX null: today is not in it
 * @param frost the shades behind, as far as they fall into the picture
 */
public record SeasonPicture(
        LocalDate from,
        LocalDate to,
        int width,
        int height,
        @Nullable Integer todayX,
        List<Head> months,
        List<Head> mondays,
        List<Shade> frost,
        List<Row> rows) {

    /** The width of a day. */
    public static final int DAY = 6;
    /** The height of the dates. */
    public static final int HEAD = 40;
    /** The height of a row; a finger's. */
    public static final int ROW = 48;

    /** What the bars can say, for the key. */
    public List<Phase> phases() {
        return List.of(Phase.values());
    }

    /** The shades of spring, in the order of their days. */
    public List<Shade> springFrost() {
        return frost.stream()
                .filter(shade -> shade.risk().side() == FrostRisk.Side.SPRING)
                .toList();
    }

    /** The shades of autumn and the winter after it. */
    public List<Shade> autumnFrost() {
        return frost.stream()
                .filter(shade -> shade.risk().side() == FrostRisk.Side.AUTUMN)
                .toList();
    }

    /** Words above a day. */
    public record Head(int x, String words) {}

    /** A run of days with one chance of frost. */
    public record Shade(int x, int width, FrostRisk risk) {}

    /** One sowing. */
    public record Row(UUID id, String crop, String variety, int y, List<Bar> bars, List<Mark> marks) {
        /** What is done, in the order of its days. */
        public List<Mark> done() {
            return marks.stream().filter(Mark::done).toList();
        }

        /** What is to come, in the order of its days. */
        public List<Mark> toCome() {
            return marks.stream().filter(mark -> !mark.done()).toList();
        }
    }

    /**
     * Where a sowing is for some days.
     *
     * @param style the phase's word; of the heat with its warmth
     * @param label empty where there is no room for it
     * @param open whether it goes on after what is drawn
     */
    public record Bar(
            String style, String label, int x, int width, String words, LocalDate from, LocalDate to, boolean open) {}

    /** A step of a sowing, done or to come; of those to come one is next. */
    public record Mark(int x, boolean done, boolean next, String title, LocalDate day) {}

    /**
     * Draws a season.
     *
     * @param climate null: nothing is known of the garden's frost
     * @param year of the first spring whose frost is shaded
     * @return empty where there is nothing to draw
     */
    public static Optional<SeasonPicture> of(
            List<Growing> sowings, @Nullable FrostClimate climate, int year, LocalDate today) {
        List<Growing> drawn =
                sowings.stream().filter(growing -> growing.first().isPresent()).toList();
        return drawn.isEmpty()
                ? Optional.empty()
                : Optional.of(new SeasonDrawing(
                                drawn, until -> climate == null ? List.of() : FrostRisk.of(climate, year, until), today)
                        .draw());
    }
}
