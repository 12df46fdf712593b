package warmshelf.check;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.LitPlace;
import warmshelf.allocation.SpaceStore;
import warmshelf.photo.PhotoStore;
import warmshelf.sowing.NotedProblem;
import warmshelf.sowing.Problem;
import warmshelf.web.Aside;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** The round of today: everything for whoever looks, a member's own for everyone else. */
public final class TodayPages implements Pages {
    private static final int LIGHT_DAYS_AHEAD = 120;
    private static final int LIGHT_CHOICES = 8;

    private final RoundStore rounds;
    private final SpaceStore space;
    private final PhotoStore photos;
    private final Aside aside;
    private final Clock clock;

    TodayPages(RoundStore rounds, SpaceStore space, PhotoStore photos, Aside aside, Clock clock) {
        this.rounds = rounds;
        this.space = space;
        this.photos = photos;
        this.aside = aside;
        this.clock = clock;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/today", this::show, Role.MEMBER);
        routes.get("/today/items/{id}", this::item, Role.MEMBER);
    }

    private void show(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        LocalDate day = visitor.today();
        RoundStore.Watch watch = rounds.watch(day);
        boolean looks = watch.today().stream().anyMatch(duty -> duty.memberId().equals(visitor.memberId()));
        Map<String, @Nullable Object> model = new HashMap<>(aside.model(visitor));
        boolean standsIn = model.get("standIn") instanceof List<?> late && !late.isEmpty();
        boolean whole = switch (String.valueOf(ctx.queryParam("show"))) {
            case "all" -> true;
            case "mine" -> false;
            default -> looks || standsIn || visitor.coordinator();
        };
        Round round = whole ? rounds.whole(day) : rounds.of(visitor.memberId(), day);
        boolean asksForLight =
                round.stops().stream().flatMap(stop -> stop.items().stream()).anyMatch(Round.Item::asksForLight);
        CheckStep one = one(ctx, round);
        model.put("one", one);
        model.put("howTos", one == null ? round.howTos(visitor.units()) : one.howTos(visitor.units()));
        String madeAt = clock.instant().toString();
        String page = UUID.randomUUID().toString();
        model.put("madeAt", madeAt);
        model.put("page", page);
        model.put("problems", Problem.values());
        addProblems(model, visitor);
        model.put("round", round);
        model.put("whole", whole);
        model.put("looks", looks);
        model.put("onDuty", watch.today());
        model.put("tomorrow", watch.tomorrow());
        model.put("litPlaces", asksForLight ? litPlaces(day, 2) : List.of());
        model.put("wholeLitPlaces", asksForLight ? litPlaces(day, 4) : List.of());
        // By this the phone knows a round from a sign-in page, and whose it is.
        ctx.header("X-Warmshelf-Member", visitor.memberId().toString());
        Respond.unlessKept(ctx, "check/today.peb", model, madeAt, page);
    }

    /** What was noted at the visitor's sowings, and what became of what they noted; coordinators see everybody's. */
    private void addProblems(Map<String, @Nullable Object> model, Visitor visitor) {
        List<NotedProblem> own = rounds.unanswered(visitor.memberId(), visitor.today());
        model.put("noted", own);
        model.put(
                "photosOf",
                photos.ofEntries(own.stream().map(each -> each.entry().id()).toList()));
        model.put(
                "notedElsewhere",
                visitor.coordinator() ? rounds.unansweredOfOthers(visitor.memberId(), visitor.today()) : List.of());
        model.put("answered", rounds.told(visitor.memberId(), visitor.today()));
    }

    private static @Nullable CheckStep one(Context ctx, Round round) {
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
        Round.Item item =
                rounds.whole(visitor.today()).item(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        PlaceAddress address = item.address();
        Map<String, Object> model = new HashMap<>();
        model.put("item", item);
        model.put("number", address == null ? 0 : address.number());
        model.put("page", UUID.randomUUID());
        model.put("litPlaces", item.asksForLight() ? litPlaces(visitor.today(), 2) : List.of());
        model.put("wholeLitPlaces", item.asksForLight() ? litPlaces(visitor.today(), 4) : List.of());
        ctx.render("check/item.peb", model);
    }

    /** The first few: every tray's choice repeats them, and the sowing's own entry form offers all. */
    private List<LitPlace> litPlaces(LocalDate day, int quarters) {
        return space.litPlaces(day, day.plusDays(LIGHT_DAYS_AHEAD), quarters).stream()
                .limit(LIGHT_CHOICES)
                .toList();
    }
}
