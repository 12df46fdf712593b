package warmshelf.plan;

import static warmshelf.plan.PlanSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Slot;
import warmshelf.allocation.Stay;
import warmshelf.plan.SeasonQuestion.Asked;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.Refused;
import warmshelf.plan.engine.SetPointSpan;
import warmshelf.words.Units;

/**
 * A proposed plan beside what is published, in words: by request, by mat and by lit shelf.
 *
 * @param lines sorted by the names of the growers
 * @param touched the surfaces on which it lays something
 * @param untouched all others, on which what is published stays as it is
 */
public record PlanView(
        List<Line> lines, List<MatDays> mats, List<String> clashes, PlanPicture touched, PlanPicture untouched) {

    /**
     * What becomes of one request.
     *
     * @param what 'gets a place', 'moves', 'keeps its place', 'loses its place', 'waits', or what its light becomes
     * @param heat on which mat; null while it waits
     * @param light under which light after the mat; null: no such place is booked
     * @param shiftDays after, or negative before, its ideal start
     * @param before where it lies as published; null: nowhere
     * @param reason why it has no place, and what would help; empty where it has one
     */
    public record Line(
            String requestId,
            String grower,
            String title,
            String what,
            @Nullable Lain heat,
            @Nullable Lain light,
            int shiftDays,
            @Nullable String before,
            String reason) {
        public int shift() {
            return Math.abs(shiftDays);
        }
    }

    /** A place in words, and the days on it; {@code to} is the day it leaves. */
    public record Lain(String where, LocalDate from, LocalDate to) {}

    /** A mat with its set-points, or a lit shelf, and what lies there in words for those who do not see the picture. */
    public record MatDays(SeasonQuestion.Surface surface, List<SetPointSpan> spans, List<Lies> lies) {}

    /** Something on a mat; {@code to} is the day it leaves. */
    public record Lies(String title, int place, String part, LocalDate from, LocalDate to, boolean proposed) {}

    static PlanView of(PlanDraft draft) {
        Map<String, PlacedStay> placed = new HashMap<>();
        draft.plan().placed().forEach(stay -> placed.put(stay.request(), stay));
        Map<String, Refused> refused = new HashMap<>();
        draft.plan().refused().forEach(no -> refused.put(no.request(), no));
        List<Line> lines = draft.asked().asked().values().stream()
                .map(asked -> line(draft, asked, placed, refused))
                .sorted(Comparator.comparing(Line::grower))
                .toList();
        Map<Boolean, List<SeasonQuestion.Surface>> surfaces = draft.asked().surfaces().stream()
                .collect(Collectors.partitioningBy(surface -> isTouched(draft, surface)));
        return new PlanView(
                lines,
                mats(draft),
                draft.clashes(),
                PlanPicture.of(draft, surfaces.getOrDefault(true, List.of())),
                PlanPicture.of(draft, surfaces.getOrDefault(false, List.of())));
    }

    private static boolean isTouched(PlanDraft draft, SeasonQuestion.Surface surface) {
        return draft.plan().placed().stream().anyMatch(stay -> Laid.on(surface, stay) != null);
    }

    private static Line line(
            PlanDraft draft, Asked asked, Map<String, PlacedStay> placed, Map<String, Refused> refused) {
        String request = asked.wanted().id();
        PlacedStay stay = placed.get(request);
        return stay != null
                ? placedLine(draft.asked(), asked, stay)
                : waitingLine(asked, refused.get(request), draft.units());
    }

    private static Line placedLine(SeasonQuestion question, Asked asked, PlacedStay stay) {
        int shift =
                (int) (stay.days().from().toEpochDay() - asked.request().ideal().toEpochDay());
        PlacedStay.LitStay light = stay.light();
        return new Line(
                asked.wanted().id(),
                asked.sowing().grower().name(),
                asked.sowing().title(),
                PlanWords.what(question, asked, stay),
                new Lain(
                        SAY.placeOnMat(stay.mat(), stay.place(), stay.slot().words()),
                        stay.days().from(),
                        stay.days().to()),
                light == null
                        ? null
                        : new Lain(
                                SAY.placeUnderLight(
                                        light.shelf(),
                                        light.place(),
                                        light.slot().words()),
                                light.days().from(),
                                light.days().to()),
                shift,
                before(asked.freed()),
                "");
    }

    private static Line waitingLine(Asked asked, @Nullable Refused no, Units units) {
        @Nullable String before = before(asked.freed());
        String what = before == null ? "waits" : SAY.losesPlace();
        String reason = no == null ? "" : no.words(units);
        return new Line(
                asked.wanted().id(),
                asked.sowing().grower().name(),
                asked.sowing().title(),
                what,
                null,
                null,
                0,
                before,
                reason);
    }

    private static @Nullable String before(@Nullable Stay freed) {
        return freed == null ? null : freed.where() + ", " + days(freed.from(), freed.to());
    }

    private static String days(LocalDate from, LocalDate to) {
        return warmshelf.words.DayWords.span(from, to);
    }

    private static List<MatDays> mats(PlanDraft draft) {
        SeasonQuestion asked = draft.asked();
        return asked.surfaces().stream()
                .map(surface -> new MatDays(
                        surface,
                        draft.plan().setPoints().stream()
                                .filter(span -> !surface.lit() && span.mat().equals(surface.name()))
                                .toList(),
                        lies(draft, surface)))
                .toList();
    }

    static List<Lies> lies(PlanDraft draft, SeasonQuestion.Surface surface) {
        List<Lies> lies = new ArrayList<>();
        draft.asked().lying().values().stream()
                .filter(surface::holds)
                .forEach(lying -> lies.add(new Lies(
                        lying.title(),
                        lying.place(),
                        lying.stay().slot().words(),
                        lying.stay().from(),
                        lying.stay().to(),
                        false)));
        for (PlacedStay stay : draft.plan().placed()) {
            Laid laid = Laid.on(surface, stay);
            if (laid != null) {
                lies.add(new Lies(
                        title(draft, stay.request()),
                        laid.place(),
                        laid.slot().words(),
                        laid.days().from(),
                        laid.days().to(),
                        true));
            }
        }
        lies.sort(Comparator.comparingInt(Lies::place).thenComparing(Lies::from));
        return lies;
    }

    /** What a placement takes of one surface. */
    record Laid(int place, Slot slot, DayRange days) {
        static @Nullable Laid on(SeasonQuestion.Surface surface, PlacedStay stay) {
            PlacedStay.LitStay light = stay.light();
            if (!surface.lit() && stay.mat().equals(surface.name())) {
                return new Laid(stay.place(), stay.slot(), stay.days());
            }
            return surface.lit() && light != null && light.shelf().equals(surface.name())
                    ? new Laid(light.place(), light.slot(), light.days())
                    : null;
        }
    }

    static String title(PlanDraft draft, String request) {
        Asked asked = draft.asked().asked().get(request);
        return asked == null ? "" : asked.title();
    }
}
