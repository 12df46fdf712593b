package warmshelf.reminder;

import static warmshelf.reminder.ReminderSentences.SAY;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import warmshelf.check.HeldRack;
import warmshelf.check.HeldRackStore;
import warmshelf.check.MatAlarm;
import warmshelf.check.MatAlarmStore;
import warmshelf.check.TodayStore;
import warmshelf.duty.LateRound;
import warmshelf.group.GroupProfile;
import warmshelf.news.NewsLine;
import warmshelf.sowing.History;
import warmshelf.sowing.NotedProblem;
import warmshelf.sowing.SowingStores;

/** What there is to tell people at the moments at which they are told; the same by every channel. */
final class Moments {
    static final LocalTime EVENING = LocalTime.of(18, 0);
    private static final Duration ALARM_COUNTS = Duration.ofHours(6);

    private final SowingStores stores;
    private final TodayStore today;
    private final MatAlarmStore alarms;
    private final HeldRackStore racks;
    private final OwnLooks looks;
    private final LateRounds lateRounds;
    private final New news;
    private final String address;

    /** With the address people type, without a slash at the end. */
    Moments(
            SowingStores stores,
            TodayStore today,
            MatAlarmStore alarms,
            HeldRackStore racks,
            OwnLooks looks,
            LateRounds lateRounds,
            New news,
            String address) {
        this.stores = stores;
        this.today = today;
        this.alarms = alarms;
        this.racks = racks;
        this.looks = looks;
        this.lateRounds = lateRounds;
        this.news = news;
        this.address = address;
    }

    /** How many of a member's own sowings want a look on a day. */
    interface OwnLooks {
        int of(UUID member, LocalDate day);
    }

    /** The rounds that somebody is to walk because whoever is on duty has not. */
    interface LateRounds {
        List<LateRound> of(UUID member, LocalDate day, LocalTime now);
    }

    /** What is new for a member and not seen yet. */
    interface New {
        List<NewsLine> of(UUID member);
    }

    /** What came since the last morning; problems are told in full beside it. */
    private List<NewsLine> newSince(UUID member, ZonedDateTime since) {
        return news.of(member).stream()
                .filter(line -> !line.isProblem() && !line.at().toInstant().isBefore(since.toInstant()))
                .toList();
    }

    static String aboutDay(LocalDate day, boolean tomorrow) {
        return (tomorrow ? "evening " : "morning ") + day;
    }

    /** One person's day; nothing when there is nothing to say. */
    Optional<Telling> day(GroupProfile profile, Listener listener, LocalDate day, boolean tomorrow) {
        List<String> duties = today.onDuty(day).stream()
                .filter(duty -> duty.memberId().equals(listener.id()))
                .map(TodayStore.OnDuty::site)
                .toList();
        List<History> underWay = stores.histories().underWay(listener.id());
        List<StepAhead> steps = StepAhead.of(underWay, stores.planner().inUnits(profile.units()), day);
        List<NotedProblem> problems = tomorrow
                ? List.of()
                : NotedProblem.unanswered(stores.problems().open(underWay).values());
        List<HeldRack> held = tomorrow
                ? List.of()
                : racks.on(day).stream()
                        .filter(rack ->
                                listener.coordinator() || rack.concerned().contains(listener.id()))
                        .toList();
        List<NewsLine> fresh = tomorrow
                ? List.of()
                : newSince(
                        listener.id(),
                        day.minusDays(1).atTime(Reminders.MORNING).atZone(profile.zone()));
        DayAhead ahead = DayAhead.of(
                day, tomorrow, duties, tomorrow ? 0 : looks.of(listener.id(), day), steps, problems, held, fresh);
        // a phone that was off is not told of a day that has gone
        ZonedDateTime until = (tomorrow ? day.atStartOfDay() : day.atTime(EVENING)).atZone(profile.zone());
        return ahead.isEmpty()
                ? Optional.empty()
                : Optional.of(new Telling(
                        aboutDay(day, tomorrow),
                        ahead.subject(),
                        ahead.words(listener.name(), profile.name(), address),
                        ahead.brief(),
                        ahead.path(),
                        false,
                        "day",
                        until.toInstant()));
    }

    /** The mats that are too hot or too cold and concern somebody. */
    List<Telling> alarms(GroupProfile profile, Listener listener, ZonedDateTime now) {
        return alarms.on(now.toLocalDate()).stream()
                .filter(alarm -> listener.coordinator() || alarm.concerned().contains(listener.id()))
                .map(alarm -> alarm(profile, listener, alarm, now))
                .toList();
    }

    private Telling alarm(GroupProfile profile, Listener listener, MatAlarm alarm, ZonedDateTime now) {
        return new Telling(
                "alarm " + alarm.reading(),
                alarm.isHot() ? SAY.matTooHot(alarm.name()) : SAY.matTooCold(alarm.name()),
                AlarmLetter.words(alarm, listener.name(), profile, address),
                alarm.where(),
                "/mats/" + alarm.mat(),
                true,
                "mat " + alarm.mat(),
                now.plus(ALARM_COUNTS).toInstant());
    }

    /** What is told to whoever stands in. */
    List<Telling> standIns(GroupProfile profile, Listener listener, ZonedDateTime now) {
        return lateRounds.of(listener.id(), now.toLocalDate(), now.toLocalTime()).stream()
                .map(late -> standIn(profile, listener, late, now))
                .toList();
    }

    private Telling standIn(GroupProfile profile, Listener listener, LateRound late, ZonedDateTime now) {
        LocalDate day = now.toLocalDate();
        return new Telling(
                "stand-in %s %s".formatted(day, late.watch().site().id()),
                SAY.youStandIn(late.watch().site().name()),
                SAY.standInLetter(listener.name(), late.standInWords(), address, profile.name()),
                SAY.roundNotDone(late.watch().doneBy()),
                "/today?show=all",
                true,
                "stand-in " + late.watch().site().id(),
                day.plusDays(1).atStartOfDay(profile.zone()).toInstant());
    }
}
