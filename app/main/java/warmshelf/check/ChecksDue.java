package warmshelf.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Stay;
import warmshelf.crop.Method;
import warmshelf.guide.PracticeDays;
import warmshelf.sowing.Progress;
import warmshelf.sowing.SowingStage;
import warmshelf.sowing.TrialPart;
import warmshelf.timeline.ColdSpell;
import warmshelf.timeline.Step;
import warmshelf.timeline.TimelineStep;

/**
 * What is due today follows from the state of a sowing, not from a table of timers: a bag is looked at daily from day seven,
 * sooner where the first twentieth of the seed is expected sooner, until all has sprouted or it is given up; cells and
 * seedlings are looked at every day; later steps fall due on the days that the re-dated timeline gives them. A look is done
 * for the day as soon as anything was entered that day, whatever else is due. All ways of a side-by-side trial are looked at from
 * the day after sowing, bags too, and counted under the light until nearly all should show: else one way would only look slower.
 */
public final class ChecksDue {
    private static final int FIRST_BAG_LOOK_DAY =
            PracticeDays.of("checks", "first look into bags").least();

    private static final int DAYS_BETWEEN_LOOKS_IN_THE_COLD =
            PracticeDays.of("chilling", "days between looks").least();

    private ChecksDue() {}

    /** What is due at a sowing on a day, the most pressing first; empty when nothing is. */
    public static List<Check> on(LocalDate today, Subject subject) {
        return switch (subject.progress().stage()) {
            case PLANNED, CHILLED, SOAKED -> beforeSowing(today, subject);
            case SOWN, SPROUTING, IN_CELLS, EMERGED -> waitingForSeed(today, subject);
            case UNDER_LIGHT, FED, POTTED_ON, HARDENING_OFF -> growingOn(today, subject);
            case PLANTED_OUT, GIVEN_UP, NOT_RECORDED, WITHDRAWN -> List.of();
        };
    }

    private static List<Check> beforeSowing(LocalDate today, Subject subject) {
        Optional<LocalDate> sowOn = sowingDay(subject);
        if (sowOn.isEmpty() || today.isBefore(sowOn.get().minusDays(1))) {
            return inTheCold(today, subject);
        }
        boolean soaks = soaks(subject) && subject.progress().stage().compareTo(SowingStage.SOAKED) < 0;
        if (!today.isBefore(sowOn.get())) {
            return List.of(check(today, CheckKind.SOW, sowOn.get(), subject, late(today, sowOn.get())));
        }
        return soaks ? List.of(check(today, CheckKind.SOAK, today, subject, null)) : List.of();
    }

    /** Seed that wants cold is put into it so long before its sowing, and looked at once a week from then on. */
    private static List<Check> inTheCold(LocalDate today, Subject subject) {
        LocalDate chilled = subject.progress().seen().chilled();
        LocalDate looked = subject.progress().lastLookOn();
        if (chilled != null && looked != null) {
            LocalDate next = looked.plusDays(DAYS_BETWEEN_LOOKS_IN_THE_COLD);
            return today.isBefore(next)
                    ? List.of()
                    : List.of(check(today, CheckKind.CHILL_LOOK, next, subject, late(today, next)));
        }
        Optional<TimelineStep> step = subject.step(Step.CHILL);
        Optional<ColdSpell> cold = ColdSpell.of(subject.sowing().crop());
        if (step.isEmpty() || cold.isEmpty()) {
            return List.of();
        }
        // What has its place is sown on the day it gets it; the rest on the day that suits best.
        Stay stay = subject.stay();
        LocalDate day = stay == null
                ? step.get().ideal()
                : stay.from().minusDays(cold.get().usualDays());
        LocalDate last = stay == null
                ? step.get().latest()
                : stay.from().minusWeeks(cold.get().least());
        return today.isBefore(day)
                ? List.of()
                : List.of(check(today, CheckKind.CHILL, day, subject, late(today, last)));
    }

    private static boolean soaks(Subject subject) {
        TrialPart trial = subject.sowing().trial();
        return trial == null ? subject.step(Step.SOAK).isPresent() : trial.soaked();
    }

    /**
     * A placed sowing starts with its stay; one that needs no mat on its ideal day, or on that of its trial; one still waiting not
     * at all.
     */
    private static Optional<LocalDate> sowingDay(Subject subject) {
        Stay stay = subject.stay();
        if (stay != null) {
            return Optional.of(stay.from());
        }
        if (subject.sowing().warm()) {
            return Optional.empty();
        }
        TrialPart trial = subject.sowing().trial();
        return trial == null ? subject.step(Step.SOW).map(TimelineStep::ideal) : Optional.of(trial.sowOn());
    }

    private static List<Check> waitingForSeed(LocalDate today, Subject subject) {
        List<Check> due = new ArrayList<>();
        Progress progress = subject.progress();
        LocalDate sown = progress.seen().sown();
        if (sown == null) {
            return List.of();
        }
        boolean inBag = subject.sowing().method() == Method.BAG
                && (progress.stage() == SowingStage.SOWN || progress.stage() == SowingStage.SPROUTING);
        if (inBag && progress.waitingToMove() > 0) {
            due.add(check(today, CheckKind.MOVE_TO_CELLS, progressDay(progress, today), subject, null));
        }
        if (progress.stage() == SowingStage.EMERGED) {
            due.add(offTheHeat(today, subject));
        }
        boolean waits = inBag && subject.sowing().trial() == null;
        LocalDate firstLook = waits ? firstBagLook(sown, subject) : sown.plusDays(1);
        if (!today.isBefore(firstLook)) {
            CheckKind kind = inBag ? CheckKind.BAG_LOOK : CheckKind.CELLS_LOOK;
            due.add(check(today, kind, firstLook, subject, lookRemark(today, firstLook, subject)));
        }
        return due;
    }

    /** Off the heat and under a light, or home by the last day that the mat is kept for it. */
    private static Check offTheHeat(LocalDate today, Subject subject) {
        LocalDate since = progressDay(subject.progress(), today);
        Optional<TimelineStep> home = subject.step(Step.TAKE_HOME).filter(step -> step.done() == null);
        return home.map(step -> check(today, CheckKind.TAKE_HOME, since, subject, late(today, step.latest())))
                .orElseGet(() -> check(today, CheckKind.OFF_HEAT, since, subject, null));
    }

    private static LocalDate progressDay(Progress progress, LocalDate today) {
        LocalDate lastLook = progress.lastLookOn();
        return lastLook == null ? today : lastLook;
    }

    private static LocalDate firstBagLook(LocalDate sown, Subject subject) {
        return subject.step(Step.FIRST_LOOK).map(TimelineStep::ideal).orElse(sown.plusDays(FIRST_BAG_LOOK_DAY));
    }

    private static List<Check> growingOn(LocalDate today, Subject subject) {
        List<Check> due = new ArrayList<>();
        nextStep(subject).flatMap(kind -> ifDue(today, kind, subject)).ifPresent(due::add);
        if (subject.progress().seen().trimmed() == null) {
            Stream.of(CheckKind.TRIM, CheckKind.PINCH)
                    .forEach(kind -> ifDue(today, kind, subject).ifPresent(due::add));
        }
        if (isStillCounted(today, subject)) {
            due.add(check(today, CheckKind.CELLS_LOOK, today, subject, null));
        }
        Stay stay = subject.stay();
        if (stay != null && stay.covers(today)) {
            due.add(check(
                    today, CheckKind.LIGHT_LOOK, stay.from(), subject, missed(today, stay.from(), subject.progress())));
        }
        return due;
    }

    private static Optional<Check> ifDue(LocalDate today, CheckKind kind, Subject subject) {
        return kind.timelineStep()
                .flatMap(subject::step)
                .filter(step -> !today.isBefore(step.ideal()))
                .map(step -> check(today, kind, step.ideal(), subject, late(today, step.latest())));
    }

    private static boolean isStillCounted(LocalDate today, Subject subject) {
        Progress progress = subject.progress();
        return subject.sowing().trial() != null
                && progress.stage() == SowingStage.UNDER_LIGHT
                && progress.up() < subject.sowing().seeds()
                && subject.dayCount(today) <= subject.nearlyAllBy().orElse(0);
    }

    /** Quick crops are not potted on: the next step is the next that the timeline has. */
    private static Optional<CheckKind> nextStep(Subject subject) {
        List<CheckKind> ahead = switch (subject.progress().stage()) {
            case UNDER_LIGHT ->
                List.of(CheckKind.FIRST_FEED, CheckKind.POT_ON, CheckKind.HARDEN_OFF, CheckKind.PLANT_OUT);
            case FED -> List.of(CheckKind.POT_ON, CheckKind.HARDEN_OFF, CheckKind.PLANT_OUT);
            case POTTED_ON -> List.of(CheckKind.HARDEN_OFF, CheckKind.PLANT_OUT);
            case HARDENING_OFF -> List.of(CheckKind.PLANT_OUT);
            default -> List.of();
        };
        return ahead.stream()
                .filter(kind -> kind.timelineStep().flatMap(subject::step).isPresent())
                .findFirst();
    }

    private static @Nullable CheckRemark late(LocalDate today, LocalDate dueOn) {
        return today.isAfter(dueOn) ? new CheckRemark.WasDue(dueOn) : null;
    }

    private static @Nullable CheckRemark lookRemark(LocalDate today, LocalDate firstLook, Subject subject) {
        CheckRemark missed = missed(today, firstLook, subject.progress());
        if (missed != null) {
            return missed;
        }
        OptionalInt nearlyAll = subject.nearlyAllBy();
        return nearlyAll.isPresent() && subject.dayCount(today) > nearlyAll.getAsInt()
                ? lateRemark(subject, nearlyAll.getAsInt())
                : null;
    }

    /** Said once a look, without urging: some seed comes weeks later than the rest. */
    private static @Nullable CheckRemark lateRemark(Subject subject, int nearlyAllBy) {
        Progress progress = subject.progress();
        boolean noneYet = progress.sprouted() == 0 && progress.up() == 0;
        OptionalDouble more = subject.moreToCome();
        if (more.isEmpty()) {
            return noneYet ? new CheckRemark.Slower(nearlyAllBy) : null;
        }
        return noneYet
                ? new CheckRemark.SlowerWithChance(nearlyAllBy, more.getAsDouble())
                : new CheckRemark.MoreMayCome(more.getAsDouble());
    }

    private static @Nullable CheckRemark missed(LocalDate today, LocalDate firstLook, Progress progress) {
        LocalDate last = progress.lastLookOn();
        LocalDate since = last == null || last.isBefore(firstLook) ? firstLook.minusDays(1) : last;
        return since.isBefore(today.minusDays(1)) ? new CheckRemark.NotLookedSince(since) : null;
    }

    private static Check check(
            LocalDate today, CheckKind kind, LocalDate since, Subject subject, @Nullable CheckRemark remark) {
        return new Check(
                kind,
                since,
                subject,
                LookFor.caution(kind, subject),
                LookFor.careful(kind, subject),
                remark,
                kind.isLook() && isLookedAt(today, subject));
    }

    /** Whoever enters a step has looked as well. */
    private static boolean isLookedAt(LocalDate today, Subject subject) {
        return today.equals(subject.progress().lastLookOn());
    }
}
