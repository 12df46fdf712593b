package warmshelf.check;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.SpaceStore;
import warmshelf.photo.PhotoStore;
import warmshelf.sowing.NotedProblem;
import warmshelf.sowing.Problem;
import warmshelf.web.Aside;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.TabletVisit;
import warmshelf.web.Visitor;

/** The round of today: everything for whoever looks, a member's own for everyone else. */
public final class TodayPages implements Pages {
    private final RoundStore rounds;
    private final SpaceStore space;
    private final PhotoStore photos;
    private final Aside aside;
    private final TabletTodayPages tablets;
    private final Clock clock;

    TodayPages(
            RoundStore rounds,
            SpaceStore space,
            PhotoStore photos,
            Aside aside,
            TabletTodayPages tablets,
            Clock clock) {
        this.rounds = rounds;
        this.space = space;
        this.photos = photos;
        this.aside = aside;
        this.tablets = tablets;
        this.clock = clock;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/today", this::show, Role.TABLET);
        routes.get("/today/items/{id}", this::item, Role.TABLET);
    }

    private void show(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        TabletVisit tablet = visitor.tablet();
        if (tablet != null) {
            tablets.show(ctx, visitor, tablet);
            return;
        }
        LocalDate day = visitor.today();
        RoundStore.Watch watch = rounds.watch(day);
        boolean looks = watch.today().stream().anyMatch(duty -> duty.memberId().equals(visitor.memberId()));
        Map<String, Object> beside = aside.model(visitor);
        boolean standsIn = beside.get("standIn") instanceof List<?> late && !late.isEmpty();
        boolean whole = switch (String.valueOf(ctx.queryParam("show"))) {
            case "all" -> true;
            case "mine" -> false;
            // where nobody is down to look, it falls to the coordinators
            default ->
                looks || standsIn || (visitor.coordinator() && watch.today().isEmpty());
        };
        Round round = whole ? rounds.whole(day) : rounds.of(visitor.memberId(), day);
        TodayPage page = page(visitor, round, one(ctx, round), whole, looks, watch);
        // By this the phone knows a round from a sign-in page, and whose it is.
        ctx.header("X-Warmshelf-Member", visitor.memberId().toString());
        Respond.unlessKept(ctx, "check/today.peb", page, beside, page.madeAt(), page.page());
    }

    /** What was noted at the visitor's sowings, and what became of what they noted; coordinators see everybody's. */
    private TodayPage page(
            Visitor visitor,
            Round round,
            @Nullable CheckStep one,
            boolean whole,
            boolean looks,
            RoundStore.Watch watch) {
        LocalDate day = visitor.today();
        UUID member = visitor.memberId();
        boolean asksForLight =
                round.stops().stream().flatMap(stop -> stop.items().stream()).anyMatch(Round.Item::asksForLight);
        List<NotedProblem> own = rounds.unanswered(member, day);
        return new TodayPage(
                round,
                one,
                one == null ? round.howTos(visitor.units()) : one.howTos(visitor.units()),
                whole,
                looks,
                watch.today(),
                watch.tomorrow(),
                List.of(Problem.values()),
                own,
                photos.ofEntries(own.stream().map(each -> each.entry().id()).toList()),
                visitor.coordinator() ? rounds.unansweredOfOthers(member, day) : List.of(),
                rounds.told(member, day),
                rounds.held(member, visitor.coordinator() || looks, day),
                asksForLight ? LightChoices.on(day, space) : LightChoices.NONE,
                clock.instant().toString(),
                UUID.randomUUID().toString());
    }

    static @Nullable CheckStep one(Context ctx, Round round) {
        List<Round.Step> walk = round.walk();
        if (!"one".equals(ctx.queryParam("show")) || walk.isEmpty()) {
            return null;
        }
        String at = String.valueOf(ctx.queryParam("at"));
        return at.matches("\\d{1,5}") ? CheckStep.at(walk, Integer.parseInt(at)) : CheckStep.firstOpen(walk);
    }

    /** One item by itself, as it stands after a tick. */
    private void item(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Round whole = rounds.whole(visitor.today());
        TabletVisit tablet = visitor.tablet();
        Round.Item item = (tablet == null ? whole : whole.at(tablet.siteId()))
                .item(Respond.id(ctx, "id"))
                .orElseThrow(Refusal::notFound);
        PlaceAddress address = item.address();
        Respond.page(
                ctx,
                "check/item.peb",
                new ItemPage(
                        item,
                        address == null ? 0 : address.number(),
                        UUID.randomUUID(),
                        item.asksForLight() ? LightChoices.on(visitor.today(), space) : LightChoices.NONE));
    }

    /**
     * One item of the round.
     *
     * @param number of its place; 0 where it lies nowhere
     * @param page the random name from which its ticks' ids are made
     * @param lights where it could go
     */
    private record ItemPage(Round.Item item, int number, UUID page, LightChoices lights) {}
}
