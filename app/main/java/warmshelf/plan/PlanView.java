package warmshelf.plan;

import static warmshelf.plan.PlanSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Slot;
import warmshelf.allocation.Stay;
import warmshelf.plan.SeasonQuestion.Asked;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.Refused;
import warmshelf.plan.engine.SetPointSpan;
import warmshelf.words.Units;

/** A proposed plan beside what is published, in words: by member, by mat and by lit shelf. */
public record PlanView(List<Member> members, List<MatDays> mats, List<String> clashes, PlanPicture picture) {

    /** One member's lines. */
    public record Member(String name, List<Line> lines) {}

    /**
     * What becomes of one request.
     *
     * @param what 'gets a place', 'moves', 'keeps its place', 'loses its place', 'waits', or what its light becomes
     * @param where in words; empty while it waits
     * @param shiftDays after, or negative before, its ideal start
     * @param before where it lies as published; null: nowhere
     * @param reason why it has no place, and what would help; empty where it has one
     */
    public record Line(
            String requestId,
            String title,
            String what,
            String where,
            int shiftDays,
            @Nullable String before,
            String reason) {
        public boolean isPlaced() {
            return !where.isEmpty();
        }

        public int shift() {
            return Math.abs(shiftDays);
        }
    }

    /** A mat with its set-points, or a lit shelf, and what lies there in words for those who do not see the picture. */
    public record MatDays(SeasonQuestion.Surface surface, List<SetPointSpan> spans, List<Lies> lies) {}

    /** Something on a mat; {@code to} is the day it leaves. */
    public record Lies(String title, int place, String part, LocalDate from, LocalDate to, boolean proposed) {}

    static PlanView of(PlanDraft draft) {
        Map<String, PlacedStay> placed = new HashMap<>();
        draft.plan().placed().forEach(stay -> placed.put(stay.request(), stay));
        Map<String, Refused> refused = new HashMap<>();
        draft.plan().refused().forEach(no -> refused.put(no.request(), no));
        Map<String, List<Line>> byMember = new TreeMap<>();
        for (Asked asked : draft.asked().asked().values()) {
            PlacedStay stay = placed.get(asked.wanted().id());
            Refused no = refused.get(asked.wanted().id());
            Line line = stay != null ? placedLine(draft.asked(), asked, stay) : waitingLine(asked, no, draft.units());
            byMember.computeIfAbsent(asked.sowing().grower().name(), none -> new ArrayList<>())
                    .add(line);
        }
        List<Member> members = byMember.entrySet().stream()
                .map(member -> new Member(member.getKey(), member.getValue()))
                .toList();
        return new PlanView(members, mats(draft), draft.clashes(), PlanPicture.of(draft));
    }

    private static Line placedLine(SeasonQuestion question, Asked asked, PlacedStay stay) {
        int shift =
                (int) (stay.days().from().toEpochDay() - asked.request().ideal().toEpochDay());
        return new Line(
                asked.wanted().id(),
                asked.sowing().title(),
                PlanWords.what(question, asked, stay),
                PlanWords.where(stay),
                shift,
                before(asked.freed()),
                "");
    }

    private static Line waitingLine(Asked asked, @Nullable Refused no, Units units) {
        @Nullable String before = before(asked.freed());
        String what = before == null ? "waits" : SAY.losesPlace();
        String reason = no == null ? "" : no.words(units);
        return new Line(asked.wanted().id(), asked.sowing().title(), what, "", 0, before, reason);
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
        lies.sort(java.util.Comparator.comparingInt(Lies::place).thenComparing(Lies::from));
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
