package warmshelf.reminder;

import java.time.Clock;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import warmshelf.check.CheckRoom;
import warmshelf.check.TodayStore;
import warmshelf.check.alarm.MatAlarmStore;
import warmshelf.group.GroupStore;
import warmshelf.sowing.SowingStores;
import warmshelf.web.BrowserSession;
import warmshelf.web.Pages;

/** Reminders, wired; and the minute's work that sends letters. */
public final class ReminderRoom {
    private static final Logger LOG = LoggerFactory.getLogger(ReminderRoom.class);
    private static final int EVERY_SECONDS = 60;

    private ReminderRoom() {}

    public static List<Pages> pages(
            SowingStores stores, GroupStore group, BrowserSession browsers, Clock clock, boolean mail) {
        CalendarLinkStore links = new CalendarLinkStore(stores.database(), stores.audit());
        return List.of(
                new CalendarPages(group, stores, links, new DutyDaysStore(stores.database()), browsers, clock),
                new ReminderPages(links, new MailWishStore(stores.database(), stores.audit()), browsers, mail));
    }

    /** Sends letters each minute until it is closed. */
    public static AutoCloseable start(
            SowingStores stores, GroupStore group, MailServer server, Clock clock, String address) {
        Reminders reminders = reminders(stores, group, server, clock, address);
        ScheduledExecutorService minutes = Executors.newSingleThreadScheduledExecutor(work -> {
            Thread thread = new Thread(work, "reminders");
            thread.setDaemon(true);
            return thread;
        });
        minutes.scheduleWithFixedDelay(() -> tick(reminders), EVERY_SECONDS, EVERY_SECONDS, TimeUnit.SECONDS);
        return minutes::shutdownNow;
    }

    static Reminders reminders(SowingStores stores, GroupStore group, MailServer server, Clock clock, String address) {
        return new Reminders(
                group,
                stores,
                new TodayStore(stores.database()),
                new MatAlarmStore(stores.database()),
                CheckRoom.ownLooks(stores)::applyAsInt,
                new MailWishStore(stores.database(), stores.audit()),
                new LetterStore(stores.database(), stores.audit()),
                new Postman(server),
                clock,
                address);
    }

    /** A minute that fails is told in the log; the next one tries again. */
    private static void tick(Reminders reminders) {
        try {
            reminders.tick();
        } catch (RuntimeException fault) {
            LOG.error("reminders could not be thought of or sent this minute; they are tried again", fault);
        }
    }
}
