package warmshelf.reminder;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import warmshelf.check.CheckRoom;
import warmshelf.check.HeldRackStore;
import warmshelf.check.MatAlarmStore;
import warmshelf.check.TodayStore;
import warmshelf.db.EndOfWork;
import warmshelf.duty.DutyRoom;
import warmshelf.group.GroupStore;
import warmshelf.reminder.push.EndpointRule;
import warmshelf.reminder.push.PublicEndpoints;
import warmshelf.reminder.push.PushAddressStore;
import warmshelf.reminder.push.PushKeys;
import warmshelf.reminder.push.PushNoticeStore;
import warmshelf.reminder.push.PushPost;
import warmshelf.reminder.push.PushWishStore;
import warmshelf.sowing.SowingRoom;
import warmshelf.sowing.SowingStores;
import warmshelf.web.BrowserSession;
import warmshelf.web.Pages;
import warmshelf.web.RateLimits;

/** Reminders, wired; and the work that sends letters and notices while nobody asks. */
public final class ReminderRoom {
    private static final Logger LOG = LoggerFactory.getLogger(ReminderRoom.class);
    private static final int THINK_EVERY_SECONDS = 60;
    /** Whoever asks for a test looks at the phone and waits. */
    private static final int PUSH_EVERY_SECONDS = 10;

    private ReminderRoom() {}

    /** By what this installation can tell people; null: not by that. */
    public record Means(@Nullable MailServer mail, @Nullable PushKeys push) {
        public boolean none() {
            return mail == null && push == null;
        }
    }

    public static List<Pages> pages(
            SowingStores stores, GroupStore group, BrowserSession browsers, Clock clock, Means means) {
        CalendarLinkStore links = new CalendarLinkStore(stores.database(), stores.audit());
        MailWishStore wishes = new MailWishStore(stores.database(), stores.audit());
        PushAddressStore devices = new PushAddressStore(stores.database(), stores.audit());
        PushWishStore pushWishes = new PushWishStore(stores.database(), stores.audit());
        PushNoticeStore notices = new PushNoticeStore(stores.database(), stores.audit());
        ReminderView view = new ReminderView(links, wishes, devices, pushWishes, means);
        EndpointRule rule = new PublicEndpoints();
        return List.of(
                new CalendarPages(
                        group,
                        stores,
                        links,
                        new ToldDayStore(stores.database()),
                        new DutyDaysStore(stores.database()),
                        browsers,
                        clock),
                new ReminderPages(links, wishes, browsers, view),
                new PushPages(devices, pushWishes, notices, view, rule, new RateLimits(clock), clock));
    }

    /** Tells people what there is to tell until it is closed. */
    public static AutoCloseable start(SowingStores stores, GroupStore group, Means means, Clock clock, String address) {
        List<ScheduledExecutorService> work = new ArrayList<>();
        if (means.mail() != null) {
            Reminders letters = reminders(stores, group, mail(stores, means.mail()), clock, address);
            work.add(each("letters", letters::tick, THINK_EVERY_SECONDS));
        }
        if (means.push() != null) {
            Channel push = push(stores, means.push(), new PublicEndpoints(), clock);
            Reminders notices = reminders(stores, group, push, clock, address);
            work.add(each("notices", notices::lay, THINK_EVERY_SECONDS));
            work.add(each("push", notices::send, PUSH_EVERY_SECONDS));
        }
        return () -> work.forEach(EndOfWork::await);
    }

    private static ScheduledExecutorService each(String name, Runnable work, int seconds) {
        ScheduledExecutorService executor = Executors.newSingleThreadScheduledExecutor(task -> {
            Thread thread = new Thread(task, "reminders-" + name);
            thread.setDaemon(true);
            return thread;
        });
        // Each round logs its own faults, so that nothing is left to wait for in what comes back.
        var unused = executor.scheduleWithFixedDelay(() -> once(work), seconds, seconds, TimeUnit.SECONDS);
        return executor;
    }

    static Channel mail(SowingStores stores, MailServer server) {
        return new MailChannel(
                new MailWishStore(stores.database(), stores.audit()),
                new LetterStore(stores.database(), stores.audit()),
                new Postman(server));
    }

    static Channel push(SowingStores stores, PushKeys keys, EndpointRule rule, Clock clock) {
        return new PushChannel(
                new PushWishStore(stores.database(), stores.audit()),
                new PushAddressStore(stores.database(), stores.audit()),
                new PushNoticeStore(stores.database(), stores.audit()),
                new PushPost(stores.database(), stores.audit(), keys, rule, clock));
    }

    static Reminders reminders(SowingStores stores, GroupStore group, Channel channel, Clock clock, String address) {
        DutyRoom duty = new DutyRoom(stores.database(), stores.audit(), CheckRoom.rounds(stores));
        Moments moments = new Moments(
                stores,
                new TodayStore(stores.database()),
                new MatAlarmStore(stores.database()),
                new HeldRackStore(stores.database(), stores.crops()),
                CheckRoom.ownLooks(stores)::applyAsInt,
                duty::standIns,
                SowingRoom.news(stores)::lines,
                address);
        return new Reminders(group, moments, channel, clock);
    }

    /** What fails is told in the log and done again the next time. */
    private static void once(Runnable work) {
        try {
            work.run();
        } catch (RuntimeException fault) {
            LOG.error("reminders could not be thought of or sent this time; they are tried again", fault);
        }
    }
}
