package warmshelf.reminder;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
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
    private final DutyDaysStore duties;
    private final BrowserSession browsers;
    private final Clock clock;

    CalendarPages(
            GroupStore group,
            SowingStores stores,
            CalendarLinkStore links,
            DutyDaysStore duties,
            BrowserSession browsers,
            Clock clock) {
        this.group = group;
        this.stores = stores;
        this.links = links;
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
        UUID member = links.memberOf(token).orElseThrow(Refusal::notFound);
        GroupProfile profile = group.find().map(GroupStore.Versioned::profile).orElseThrow(Refusal::notFound);
        Instant now = clock.instant();
        LocalDate today = now.atZone(profile.zone()).toLocalDate();
        String written = new CalendarFeed(browsers.wholeAddress(ctx, ""), now)
                .written(
                        profile.name(),
                        StepAhead.of(
                                stores.histories().underWay(member),
                                stores.planner().inUnits(profile.units()),
                                today),
                        duties.of(member, today.minusDays(DAYS_BACK)));
        ctx.header("Cache-Control", "private, max-age=900");
        ctx.contentType("text/calendar; charset=utf-8").result(written);
    }
}
