package warmshelf.reminder;

import static warmshelf.reminder.ReminderSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import warmshelf.group.GroupProfile;
import warmshelf.group.GroupStore;
import warmshelf.sowing.SowingStores;
import warmshelf.web.BrowserSession;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Role;

/**
 * Calendars for programs that show them. They cannot sign in, so the address itself is the secret: 256 random bits that only
 * their hash is kept of.
 */
final class CalendarPages implements Pages {
    private static final int DAYS_BACK = 30;

    private final GroupStore group;
    private final SowingStores stores;
    private final CalendarLinkStore links;
    private final ToldDayStore days;
    private final DutyDaysStore duties;
    private final BrowserSession browsers;
    private final Clock clock;

    CalendarPages(
            GroupStore group,
            SowingStores stores,
            CalendarLinkStore links,
            ToldDayStore days,
            DutyDaysStore duties,
            BrowserSession browsers,
            Clock clock) {
        this.group = group;
        this.stores = stores;
        this.links = links;
        this.days = days;
        this.duties = duties;
        this.browsers = browsers;
        this.clock = clock;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/calendar/{token}", this::feed, Role.ANYONE);
    }

    private void feed(Context ctx) {
        String token = ctx.pathParam("token").replaceAll("\\.ics$", "");
        CalendarLinkStore.Opened opened = links.opened(token).orElseThrow(Refusal::notFound);
        GroupProfile profile = group.find().map(GroupStore.Versioned::profile).orElseThrow(Refusal::notFound);
        Instant now = clock.instant();
        LocalDate today = now.atZone(profile.zone()).toLocalDate();
        List<FeedDay> events = new ArrayList<>();
        if (opened.part() == CalendarPart.ALL) {
            StepAhead.of(
                            stores.histories().underWay(opened.member()),
                            stores.planner().inUnits(profile.units()),
                            today)
                    .forEach(step -> events.add(FeedDay.of(step)));
        }
        events.addAll(duties.of(opened.member(), today.minusDays(DAYS_BACK)));
        List<ToldDay> told = days.tell(opened.member(), opened.part(), events, now, today);
        String name = opened.part() == CalendarPart.ALL ? profile.name() : SAY.dutyCalendar(profile.name());
        ctx.header("Cache-Control", "private, max-age=900");
        ctx.contentType("text/calendar; charset=utf-8")
                .result(new CalendarFeed(browsers.wholeAddress(ctx, "")).written(name, events, told));
    }
}
