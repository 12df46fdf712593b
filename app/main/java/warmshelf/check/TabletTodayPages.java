package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.SpaceStore;
import warmshelf.sowing.Problem;
import warmshelf.tablet.TabletReachPages;
import warmshelf.web.Aside;
import warmshelf.web.LookerCookie;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.TabletVisit;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** The round of a site on the tablet that stands there, and who ticks on it. */
final class TabletTodayPages implements Pages {
    private final RoundStore rounds;
    private final SpaceStore space;
    private final TabletReachPages reach;
    private final Aside aside;
    private final Clock clock;

    TabletTodayPages(RoundStore rounds, SpaceStore space, TabletReachPages reach, Aside aside, Clock clock) {
        this.rounds = rounds;
        this.space = space;
        this.reach = reach;
        this.aside = aside;
        this.clock = clock;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.post("/today/looker", this::choose, Role.TABLET);
    }

    /**
     * The round of a site.
     *
     * @param one the card shown where checks are walked one at a time; null where they stand in a list
     * @param whole always: whatever lies there, whosever it is
     * @param looks always: whoever stands there looks
     * @param lights where trays could go under a light
     * @param lookers who could tick
     * @param looker who does; empty: the tablet itself
     * @param idleMinutes after which nobody is known to tick any more
     * @param madeAt the moment, as the tablet sends it back with each tick
     * @param page the random name from which the ticks' ids are made
     */
    private record TabletTodayPage(
            Round round,
            @Nullable CheckStep one,
            List<HowTo> howTos,
            boolean whole,
            boolean looks,
            List<Problem> problems,
            LightChoices lights,
            List<Choice> lookers,
            String looker,
            long idleMinutes,
            String madeAt,
            String page) {}

    void show(Context ctx, Visitor visitor, TabletVisit tablet) {
        Round round = rounds.whole(visitor.today()).at(tablet.siteId());
        CheckStep one = TodayPages.one(ctx, round);
        boolean asksForLight =
                round.stops().stream().flatMap(stop -> stop.items().stream()).anyMatch(Round.Item::asksForLight);
        TabletTodayPage page = new TabletTodayPage(
                round,
                one,
                one == null ? round.howTos(visitor.units()) : one.howTos(visitor.units()),
                true,
                true,
                List.of(Problem.values()),
                asksForLight ? LightChoices.on(visitor.today(), space) : LightChoices.NONE,
                reach.lookers(),
                reach.looker(ctx, visitor).map(UUID::toString).orElse(""),
                LookerCookie.IDLE.toMinutes(),
                clock.instant().toString(),
                UUID.randomUUID().toString());
        // By this the worker knows a round from a sign-in page, and whose it is.
        ctx.header("X-Warmshelf-Member", visitor.memberId().toString());
        Respond.unlessKept(ctx, "check/tablet.peb", page, aside.model(visitor), page.madeAt(), page.page());
    }

    private void choose(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        if (visitor.tablet() == null) {
            throw Refusal.notFound();
        }
        FormReader form = new FormReader(ctx.formParamMap());
        List<Choice> lookers = reach.lookers();
        String typed = form.text("looker");
        if (!typed.isEmpty() && lookers.stream().noneMatch(each -> each.value().equals(typed))) {
            throw Refusal.of(HttpStatus.UNPROCESSABLE_CONTENT, SAY.noSuchLooker(typed));
        }
        reach.keepLooker(ctx, typed.isEmpty() ? null : UUID.fromString(typed));
        String name = lookers.stream()
                .filter(each -> each.value().equals(typed))
                .map(Choice::words)
                .findFirst()
                .orElse(visitor.called());
        Respond.seeOther(ctx, GoOn.to(form.text("then"), "/today"), SAY.looks(name));
    }
}
