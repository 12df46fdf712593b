package warmshelf.timeline;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.UsualSowing;
import warmshelf.guide.Advice;
import warmshelf.timeline.PlantingOut.ByFrost;
import warmshelf.words.DayWords;

/**
 * What is said before anybody asks for warm space for a crop that bears no moving.
 *
 * @param from the first day to sow it outdoors, so that its seedlings come up when plants may stand there; null: not known
 */
public record SowingOutside(UsualSowing usual, @Nullable LocalDate from, Reason reason) {
    private static final String FILE = Advice.stepFile("sow-outside");

    /** Empty for a crop whose roots may be moved, and once it is sown. */
    static Optional<SowingOutside> of(TimelineQuestion question, DateWindow plantingOut) {
        return question.seen().sown() != null
                ? Optional.empty()
                : UsualSowing.of(question.crop()).map(usual -> of(usual, question, from(usual, question, plantingOut)));
    }

    private static SowingOutside of(UsualSowing usual, TimelineQuestion question, @Nullable LocalDate from) {
        OptionalDouble soil = usual.soilC();
        Map<String, Object> values = Map.of(
                "from",
                from == null ? "" : DayWords.dayOfMonth(from),
                "soil",
                soil.isPresent() ? question.units().temperature(soil.getAsDouble()) : "");
        String section = switch (usual.place()) {
            case WHERE_IT_GROWS -> "why where it grows";
            case POT_THAT_ROTS -> "why in a pot";
        };
        return new SowingOutside(usual, from, new Reason(FILE, section, values, question.units()));
    }

    /** As a heading. */
    public String title() {
        return switch (usual.place()) {
            case WHERE_IT_GROWS -> Advice.fixed(FILE, "title where it grows");
            case POT_THAT_ROTS -> Advice.fixed(FILE, "title in a pot");
        };
    }

    /** In a sentence, with the day and the warmth of the soil where they are known. */
    public String why() {
        return reason.words();
    }

    /** What to do where it is begun indoors all the same. */
    public String how() {
        return Advice.in(reason.units()).say(FILE, "how");
    }

    private static @Nullable LocalDate from(UsualSowing usual, TimelineQuestion question, DateWindow plantingOut) {
        if (!(question.plantingOut() instanceof ByFrost frost)
                || frost.part() != SeasonPart.SPRING
                || !frost.dates().isFrostFeared()) {
            return null;
        }
        double soil = usual.soilC().orElse(question.response().comfortable().low());
        int days = question.response()
                .at(soil)
                .map(emergence -> (int) Math.floor(emergence.days()))
                .orElse(0);
        return plantingOut.ideal().minusDays(days);
    }
}
