package warmshelf.timeline;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.BoltingLimit;
import warmshelf.crop.ColdLimit;
import warmshelf.crop.Crop;
import warmshelf.crop.CropSources;
import warmshelf.crop.Hardiness;
import warmshelf.crop.PlantingOutWords;
import warmshelf.crop.SourceMatter;
import warmshelf.crop.SourcedRange;
import warmshelf.timeline.PlantingOut.ByFrost;
import warmshelf.timeline.PlantingOut.UnderCover;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;

/**
 * The days on which plants may go out, with the reason.
 *
 * <p>Outdoors the ideal day is the later of two: the crop's usual offset from the average last frost, and the day when the
 * chance of a later frost has fallen to what the grower accepts. A hardy crop's negative offset moves both; a tender crop
 * never goes out before the second.
 */
record PlantingOutWindow(DateWindow days, Reason reason) {
    // Tender plants are checked, not killed, a little below their night minimum; the very tender get this margin
    // (ours).
    private static final double VERY_TENDER_MARGIN_C = 2;
    // Where no frost sets a date, any day will do; four weeks are as good a window as any.
    private static final int ANY_DAY_WINDOW = 28;

    static PlantingOutWindow of(TimelineQuestion question) {
        if (question.plantingOut() instanceof UnderCover cover) {
            return new PlantingOutWindow(DateWindow.on(cover.onDay()), reason("why under cover", Map.of(), question));
        }
        ByFrost frost = (ByFrost) question.plantingOut();
        FrostDates dates = frost.dates();
        if (frost.part() != SeasonPart.SPRING) {
            return BeforeFirstFrost.of(question.crop(), frost.part(), dates)
                    .map(before -> before(before, question))
                    .orElseGet(() -> anyDay(question));
        }
        LocalDate ideal = ideal(question.crop(), dates);
        return ideal == null ? anyDay(question) : byFrost(question, dates, ideal);
    }

    private static PlantingOutWindow before(BeforeFirstFrost frost, TimelineQuestion question) {
        String section =
                question.plantingOut().seasonPart() == SeasonPart.WINTER ? "why over winter" : "why for autumn";
        return new PlantingOutWindow(frost.days(), reason(section, frost.figures(question.crop()), question));
    }

    private static @Nullable LocalDate ideal(Crop crop, FrostDates dates) {
        int offset = crop.plantOutOffsetDays();
        LocalDate average = dates.lastSpringAverage();
        LocalDate atRisk = dates.lastSpringAtRisk();
        LocalDate usual = average == null ? null : average.plusDays(offset);
        LocalDate safe = atRisk == null ? null : atRisk.plusDays(waits(crop) ? 0 : Math.min(offset, 0));
        if (usual == null || safe == null) {
            return usual == null ? safe : usual;
        }
        return DateWindow.later(usual, safe);
    }

    /** Whether it may go out before the last frost only where neither that nor bolting is to be feared. */
    private static boolean waits(Crop crop) {
        return BoltingLimit.of(crop).filter(BoltingLimit::waits).isPresent();
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
        return new PlantingOutWindow(new DateWindow(earliest, ideal, latest), frostReason(question, dates, ideal));
    }

    private static PlantingOutWindow anyDay(TimelineQuestion question) {
        LocalDate sown = question.seen().sown() == null
                ? question.today()
                : question.seen().sown();
        Crop crop = question.crop();
        LocalDate ideal = sown.plusDays(SowingWindow.idealDaysIndoors(crop));
        return new PlantingOutWindow(
                new DateWindow(sown.plusWeeks(crop.weeksIndoorsMin()), ideal, ideal.plusDays(ANY_DAY_WINDOW)),
                reason("why on any day", Map.of(), question));
    }

    private static Reason frostReason(TimelineQuestion question, FrostDates dates, LocalDate ideal) {
        int offset = question.crop().plantOutOffsetDays();
        LocalDate average = dates.lastSpringAverage();
        LocalDate atRisk = dates.lastSpringAtRisk();
        Map<String, Object> values = Map.of(
                "offset",
                offset == 0 ? "" : Counted.days(Math.abs(offset)),
                "isAfter",
                offset > 0,
                "average",
                average == null ? "" : DayWords.dayOfMonth(average),
                "risk",
                DayWords.dayOfMonth(atRisk == null ? ideal : atRisk));
        boolean usual =
                average != null && (atRisk == null || average.plusDays(offset).equals(ideal));
        if (waits(question.crop())) {
            return reason("why against bolting", values, question);
        }
        return reason(usual ? "why on the usual day" : byRisk(offset, average), values, question);
    }

    private static String byRisk(int offset, @Nullable LocalDate average) {
        if (offset < 0) {
            return "why before the last frost";
        }
        return average == null ? "why at your risk" : "why later than usual";
    }

    private static Reason reason(String section, Map<String, ?> values, TimelineQuestion question) {
        Map<String, Object> all = new HashMap<>(values);
        Crop crop = question.crop();
        Double nights = crop.nightMinimumC();
        all.put("nights", nights == null ? "" : question.units().temperature(nights));
        all.put(
                "better",
                nights != null && crop.hardiness() == Hardiness.VERY_TENDER
                        ? question.units().temperature(nights + VERY_TENDER_MARGIN_C)
                        : "");
        SourcedRange sources = CropSources.bundled().of(crop, SourceMatter.PLANTING_OUT);
        all.put("sources", sources.differs() ? PlantingOutWords.of((int) sources.low(), (int) sources.high()) : "");
        all.put("bears", question.units().temperature(ColdLimit.of(crop).bearsC()));
        all.put(
                "bolts",
                BoltingLimit.of(crop)
                        .map(limit -> question.units().temperature(limit.belowC()))
                        .orElse(""));
        all.put(
                "boltDays",
                BoltingLimit.of(crop).map(limit -> Counted.days(limit.days())).orElse(""));
        return Step.PLANT_OUT.why(section, all, question.units());
    }

    /** The reason, with what else there is to say of the day on which it comes to be. */
    Reason why(Map<String, String> more) {
        Map<String, Object> all = new HashMap<>(reason.values());
        all.putAll(more);
        return new Reason(reason.file(), reason.section(), all, reason.units());
    }
}
