package warmshelf.reminder;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import warmshelf.group.GroupProfile;
import warmshelf.group.GroupStore;

/** Thinks of what is to be told by one channel at this minute, and sends what is laid ready. */
final class Reminders {
    static final LocalTime MORNING = LocalTime.of(7, 0);
    /** What could not be told in the morning by noon says nothing useful any more. */
    private static final LocalTime NOON = LocalTime.NOON;

    private final GroupStore group;
    private final Moments moments;
    private final Channel channel;
    private final Clock clock;

    Reminders(GroupStore group, Moments moments, Channel channel, Clock clock) {
        this.group = group;
        this.moments = moments;
        this.channel = channel;
        this.clock = clock;
    }

    /** One minute's work. */
    void tick() {
        lay();
        send();
    }

    void lay() {
        group.find().map(GroupStore.Versioned::profile).ifPresent(this::lay);
    }

    void send() {
        group.find().map(GroupStore.Versioned::profile).ifPresent(channel::send);
    }

    private void lay(GroupProfile profile) {
        ZonedDateTime now = clock.instant().atZone(profile.zone());
        LocalTime time = now.toLocalTime();
        LocalDate day = now.toLocalDate();
        boolean morning = !time.isBefore(MORNING) && time.isBefore(NOON);
        boolean evening = !time.isBefore(Moments.EVENING);
        for (Listener listener : channel.listeners()) {
            if (morning && listener.inTheMorning()) {
                layDay(profile, listener, day, false);
            }
            if (evening && listener.inTheEvening()) {
                layDay(profile, listener, day.plusDays(1), true);
            }
            if (listener.ofAlarms()) {
                moments.alarms(profile, listener, now).forEach(telling -> channel.lay(listener, telling));
            }
            if (listener.ofStandIns()) {
                moments.standIns(profile, listener, now).forEach(telling -> channel.lay(listener, telling));
            }
        }
    }

    private void layDay(GroupProfile profile, Listener listener, LocalDate day, boolean tomorrow) {
        // asked before the day is thought of, which is work
        if (!channel.knows(listener.id(), Moments.aboutDay(day, tomorrow))) {
            moments.day(profile, listener, day, tomorrow).ifPresent(telling -> channel.lay(listener, telling));
        }
    }
}
