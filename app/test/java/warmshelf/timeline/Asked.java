package warmshelf.timeline;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Method;
import warmshelf.words.Units;

/** Makes timeline questions for tests, changed from a plain one: in cells, on a mat, asked on New Year's Day 2027. */
record Asked(TimelineQuestion question) {
    private static final LocalDate NEW_YEAR = LocalDate.of(2027, 1, 1);

    /** Outdoors, with one date for the last spring frost and no autumn frost known. */
    static Asked of(Crop crop, double matC, LocalDate lastFrost) {
        return of(crop, matC, FrostDates.of(lastFrost, null));
    }

    static Asked of(Crop crop, double matC, FrostDates dates) {
        return of(crop, matC, new PlantingOut.ByFrost(dates));
    }

    static Asked of(Crop crop, double matC, PlantingOut plantingOut) {
        return new Asked(new TimelineQuestion(
                crop,
                CropCatalogue.bundled().responseOf(crop),
                Method.CELLS,
                plantingOut,
                true,
                matC,
                NEW_YEAR,
                Seen.nothing(),
                Units.METRIC));
    }

    Asked inBag() {
        return with(Method.BAG, question.warm(), question.today(), question.seen());
    }

    Asked withoutMat() {
        return with(question.method(), false, question.today(), question.seen());
    }

    Asked on(LocalDate today) {
        return with(question.method(), question.warm(), today, question.seen());
    }

    Asked having(Seen seen) {
        return with(question.method(), question.warm(), question.today(), seen);
    }

    Asked seedsToACell(int seeds) {
        TimelineQuestion q = question;
        return new Asked(new TimelineQuestion(
                q.crop(),
                q.response(),
                q.method(),
                q.plantingOut(),
                q.warm(),
                q.matC(),
                q.today(),
                q.seen(),
                null,
                seeds,
                q.units()));
    }

    Asked readIn(Units units) {
        TimelineQuestion q = question;
        return new Asked(new TimelineQuestion(
                q.crop(), q.response(), q.method(), q.plantingOut(), q.warm(), q.matC(), q.today(), q.seen(), units));
    }

    private Asked with(Method method, boolean warm, LocalDate today, Seen seen) {
        TimelineQuestion q = question;
        return new Asked(new TimelineQuestion(
                q.crop(), q.response(), method, q.plantingOut(), warm, q.matC(), today, seen, q.units()));
    }

    Timeline answered() {
        return Timeline.plan(question);
    }

    TimelineStep step(Step step) {
        return answered().step(step).orElseThrow();
    }

    /** Sown and, if given, up on these days. */
    static Seen seen(LocalDate sown, @Nullable LocalDate emerged) {
        return new Seen(null, null, sown, null, null, emerged, null, null, null, null, null, null, null);
    }
}
