package warmshelf.reminder;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import warmshelf.check.TodayStore;
import warmshelf.check.alarm.MatAlarm;
import warmshelf.check.alarm.MatAlarmStore;
import warmshelf.group.GroupProfile;
import warmshelf.group.GroupStore;
import warmshelf.sowing.SowingStores;
import warmshelf.web.Units;

/** Thinks of what is to be told at this minute, and sends what is laid ready. */
final class Reminders {
    private static final Logger LOG = LoggerFactory.getLogger(Reminders.class);
    private static final LocalTime MORNING = LocalTime.of(7, 0);
    /** A morning letter that could not go out by noon says nothing useful any more. */
    private static final LocalTime NOON = LocalTime.NOON;

    private static final LocalTime EVENING = LocalTime.of(18, 0);

    private final GroupStore group;
    private final SowingStores stores;
    private final TodayStore today;
    private final MatAlarmStore alarms;
    private final OwnLooks looks;
    private final MailWishStore wishes;
    private final LetterStore letters;
    private final Postman postman;
    private final Clock clock;
    private final String address;

    Reminders(
            GroupStore group,
            SowingStores stores,
            TodayStore today,
            MatAlarmStore alarms,
            OwnLooks looks,
            MailWishStore wishes,
            LetterStore letters,
            Postman postman,
            Clock clock,
            String address) {
        this.group = group;
        this.stores = stores;
        this.today = today;
        this.alarms = alarms;
        this.looks = looks;
        this.wishes = wishes;
        this.letters = letters;
        this.postman = postman;
        this.clock = clock;
        this.address = address;
    }

    /** How many of a member's own sowings want a look on a day. */
    interface OwnLooks {
        int of(UUID member, LocalDate day);
    }

    /** One minute's work. */
    void tick() {
        group.find().map(GroupStore.Versioned::profile).ifPresent(profile -> {
            lay(profile);
            send(profile);
        });
    }

    private void lay(GroupProfile profile) {
        ZonedDateTime now = clock.instant().atZone(profile.zone());
        LocalTime time = now.toLocalTime();
        LocalDate day = now.toLocalDate();
        List<MailWishStore.Reader> readers = wishes.readers();
        boolean morning = !time.isBefore(MORNING) && time.isBefore(NOON);
        boolean evening = !time.isBefore(EVENING);
        for (MailWishStore.Reader reader : readers) {
            if (morning && reader.wish().inTheMorning()) {
                lay(profile, reader, day, false);
            }
            if (evening && reader.wish().inTheEvening()) {
                lay(profile, reader, day.plusDays(1), true);
            }
            if (reader.wish().ofAlarms()) {
                layAlarms(profile, reader, day);
            }
        }
    }

    private void lay(GroupProfile profile, MailWishStore.Reader reader, LocalDate day, boolean tomorrow) {
        String about = (tomorrow ? "evening " : "morning ") + day;
        if (letters.knows(reader.id(), about)) {
            return;
        }
        List<String> duties = today.onDuty(day).stream()
                .filter(duty -> duty.memberId().equals(reader.id()))
                .map(TodayStore.OnDuty::site)
                .toList();
        List<StepAhead> steps = StepAhead.of(stores.histories().underWay(reader.id()), stores.planner(), day);
        DayAhead ahead = DayAhead.of(day, tomorrow, duties, tomorrow ? 0 : looks.of(reader.id(), day), steps);
        if (!ahead.isEmpty()) {
            letters.write(
                    reader.id(),
                    about,
                    reader.wish().address(),
                    ahead.subject(),
                    ahead.words(reader.name(), profile.name(), address));
        }
    }

    private void layAlarms(GroupProfile profile, MailWishStore.Reader reader, LocalDate day) {
        for (MatAlarm alarm : alarms.on(day)) {
            if (reader.coordinator() || alarm.concerned().contains(reader.id())) {
                letters.write(
                        reader.id(),
                        "alarm " + alarm.reading(),
                        reader.wish().address(),
                        "Mat %s is too %s".formatted(alarm.name(), alarm.isHot() ? "hot" : "cold"),
                        words(alarm, reader.name(), profile));
            }
        }
    }

    private String words(MatAlarm alarm, String name, GroupProfile profile) {
        Units units = profile.units();
        return """
                Hello %s,

                %s read mat %s (%s) at %s on %s; it is to stand at %s.

                %s Dry hands, and unplug it before you touch anything wet.

                %s/mats/%s

                %s
                To change when you are written to, or stop it: %s/reminders
                """.formatted(
                        name,
                        alarm.by(),
                        alarm.name(),
                        alarm.where(),
                        units.temperature(alarm.readC()),
                        warmshelf.web.DayWords.day(alarm.readOn()),
                        units.temperature(alarm.setPointC()),
                        alarm.advice(),
                        address,
                        alarm.mat(),
                        profile.name(),
                        address);
    }

    private void send(GroupProfile profile) {
        for (LetterStore.Letter letter : letters.take()) {
            try {
                postman.send(profile.name(), letter.address(), letter.subject(), letter.words());
                letters.sent(letter.id());
            } catch (Postman.NotTaken notTaken) {
                letters.failed(letter);
                LOG.warn(
                        "letter {} was not taken by the mail server (try {}): {}",
                        letter.id(),
                        letter.tries(),
                        notTaken.getMessage());
            }
        }
    }
}
