package warmshelf.timeline;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.Hardiness;
import warmshelf.timeline.PlantingOut.ByFrost;
import warmshelf.timeline.PlantingOut.UnderCover;

/**
 * The days on which plants may go out, with the reason.
 *
 * <p>Outdoors the ideal day is the later of two: the crop's usual offset from the average last frost, and the day when the
 * chance of a later frost has fallen to what the grower accepts. A hardy crop's negative offset moves both; a tender crop
 * never goes out before the second.
 */
record PlantingOutWindow(DateWindow days, String why) {
    // Tender plants are checked, not killed, a little below their night minimum; the very tender get this margin
    // (ours).
    private static final double VERY_TENDER_MARGIN_C = 2;
    // Where no frost sets a date, any day will do; four weeks are as good a window as any.
    private static final int ANY_DAY_WINDOW = 28;

    static PlantingOutWindow of(TimelineQuestion question) {
        if (question.plantingOut() instanceof UnderCover cover) {
            return new PlantingOutWindow(
                    DateWindow.on(cover.onDay()), "Under cover, on the day you named: no frost date decides.");
        }
        FrostDates dates = ((ByFrost) question.plantingOut()).dates();
        LocalDate ideal = ideal(question.crop(), dates);
        return ideal == null ? anyDay(question) : byFrost(question, dates, ideal);
    }

    private static @Nullable LocalDate ideal(Crop crop, FrostDates dates) {
        int offset = crop.plantOutOffsetDays();
        LocalDate average = dates.lastSpringAverage();
        LocalDate atRisk = dates.lastSpringAtRisk();
        LocalDate usual = average == null ? null : average.plusDays(offset);
        LocalDate safe = atRisk == null ? null : atRisk.plusDays(Math.min(offset, 0));
        if (usual == null || safe == null) {
            return usual == null ? safe : usual;
        }
        return DateWindow.later(usual, safe);
    }

    private static PlantingOutWindow byFrost(TimelineQuestion question, FrostDates dates, LocalDate ideal) {
        Crop crop = question.crop();
        LocalDate average = dates.lastSpringAverage();
        LocalDate earliest = ideal;
        // What frost kills waits for the accepted risk in any case; the rest may go out at its usual offset.
        if (average != null && !crop.hardiness().frostKills()) {
            earliest = average.plusDays(crop.plantOutOffsetDays());
        }
        LocalDate latest = ideal.plusDays(Math.max(0, crop.plantOutOffsetDaysLatest() - crop.plantOutOffsetDays()));
        return new PlantingOutWindow(
                new DateWindow(earliest, ideal, latest),
                frostReason(crop, dates, ideal) + nightReason(crop, question.measures()));
    }

    private static PlantingOutWindow anyDay(TimelineQuestion question) {
        LocalDate sown = question.seen().sown() == null
                ? question.today()
                : question.seen().sown();
        Crop crop = question.crop();
        LocalDate ideal = sown.plusDays(SowingWindow.idealDaysIndoors(crop));
        return new PlantingOutWindow(
                new DateWindow(sown.plusWeeks(crop.weeksIndoorsMin()), ideal, ideal.plusDays(ANY_DAY_WINDOW)),
                "No spring frost to fear here, so any day will do once the plants are big enough."
                        + nightReason(crop, question.measures()));
    }

    private static String frostReason(Crop crop, FrostDates dates, LocalDate ideal) {
        int offset = crop.plantOutOffsetDays();
        LocalDate average = dates.lastSpringAverage();
        LocalDate atRisk = dates.lastSpringAtRisk();
        String byOffset = average == null ? "" : aroundTheFrost(offset, average);
        if (average != null && (atRisk == null || average.plusDays(offset).equals(ideal))) {
            return byOffset + ".";
        }
        String risk = TimelineWords.day(atRisk == null ? ideal : atRisk);
        if (offset < 0) {
            return "%s before %s, when the chance of a later frost has fallen to what you accept: it bears some cold once hardened off."
                    .formatted(TimelineWords.days(-offset), risk);
        }
        String andNotBefore = "on %s the chance of a later frost has fallen to what you accept.".formatted(risk);
        return byOffset.isEmpty()
                ? Character.toUpperCase(andNotBefore.charAt(0)) + andNotBefore.substring(1)
                : byOffset + ", would be the usual day, but only " + andNotBefore;
    }

    private static String aroundTheFrost(int offset, LocalDate average) {
        String frost = "the average last frost, " + TimelineWords.day(average);
        if (offset == 0) {
            return "At " + frost;
        }
        return offset > 0
                ? "%s after %s".formatted(TimelineWords.days(offset), frost)
                : "%s before %s".formatted(TimelineWords.days(-offset), frost);
    }

    /** A thing to look at: no forecast is at hand. */
    private static String nightReason(Crop crop, Measures measures) {
        Double nights = crop.nightMinimumC();
        if (nights == null) {
            return "";
        }
        String reason = " Look at the forecast first: nights should stay above " + measures.temperature(nights);
        return crop.hardiness() == Hardiness.VERY_TENDER
                ? reason + ", better " + measures.temperature(nights + VERY_TENDER_MARGIN_C) + "."
                : reason + ".";
    }
}
