package warmshelf.paper;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Stay;
import warmshelf.label.ShortCode;
import warmshelf.label.SowingCodes;
import warmshelf.sowing.History;
import warmshelf.sowing.SowingPlanner;
import warmshelf.sowing.SowingStores;
import warmshelf.timeline.Step;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.TimelineStep;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** Sheets of one's own sowings; coordinators print everybody's, one member to a page. */
final class GrowerSheetPages implements Pages {
    private static final int WEEKS_AHEAD = 4;

    private final SowingStores stores;
    private final SowingCodes codes;

    GrowerSheetPages(SowingStores stores) {
        this.stores = stores;
        this.codes = new SowingCodes(stores.database(), stores.audit());
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/paper/season", this::season, Role.MEMBER);
        routes.get("/paper/hardening-off", this::hardeningOff, Role.MEMBER);
    }

    /** A sowing with its steps and its places that are not over. */
    public record SeasonLine(History history, @Nullable ShortCode code, List<TimelineStep> steps, List<Stay> stays) {}

    /** One member's sowings. */
    public record GrowerSeason(String grower, List<SeasonLine> lines) {}

    /** @param all whether everybody's are shown */
    private record SeasonPage(List<GrowerSeason> growers, boolean all) {}

    /** One member's plants that go out. */
    public record GrowerHardening(String grower, List<HardeningPlan> plans) {}

    private record HardeningPage(List<GrowerHardening> growers, boolean all, int weeks) {}

    private void season(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        boolean all = all(ctx);
        List<History> histories = histories(visitor, all);
        SowingPlanner planner = stores.planner().inUnits(visitor.units());
        Map<UUID, ShortCode> codeOf = codes.of(
                histories.stream().map(history -> history.sowing().id()).toList(), visitor.memberId());
        List<GrowerSeason> growers = new ArrayList<>();
        byGrower(histories)
                .forEach((grower, of) -> growers.add(new GrowerSeason(
                        grower,
                        of.stream()
                                .map(history -> line(history, planner, visitor.today(), codeOf))
                                .toList())));
        Respond.page(ctx, "paper/season.peb", new SeasonPage(growers, all));
    }

    private static SeasonLine line(
            History history, SowingPlanner planner, LocalDate today, Map<UUID, ShortCode> codeOf) {
        List<TimelineStep> steps = timeline(history, planner, today)
                .map(timeline -> timeline.steps().stream()
                        .filter(step -> step.step() != Step.RIPE)
                        .toList())
                .orElse(List.of());
        List<Stay> stays = history.stays().stream()
                .filter(stay -> stay.to().isAfter(today))
                .toList();
        return new SeasonLine(history, codeOf.get(history.sowing().id()), steps, stays);
    }

    private void hardeningOff(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        boolean all = all(ctx);
        SowingPlanner planner = stores.planner();
        LocalDate until = visitor.today().plusWeeks(WEEKS_AHEAD);
        List<GrowerHardening> growers = new ArrayList<>();
        byGrower(histories(visitor, all)).forEach((grower, of) -> {
            List<HardeningPlan> plans = of.stream()
                    .flatMap(history -> timeline(history, planner, visitor.today())
                            .flatMap(timeline -> HardeningPlan.of(history, timeline, until))
                            .stream())
                    .toList();
            if (!plans.isEmpty()) {
                growers.add(new GrowerHardening(grower, plans));
            }
        });
        Respond.page(ctx, "paper/hardening-off.peb", new HardeningPage(growers, all, WEEKS_AHEAD));
    }

    private static Optional<Timeline> timeline(History history, SowingPlanner planner, LocalDate today) {
        return planner.timeline(history.sowing(), history.progress(), history.celsius(planner), today);
    }

    private static boolean all(Context ctx) {
        return Visitor.of(ctx).coordinator() && "all".equals(ctx.queryParam("of"));
    }

    private List<History> histories(Visitor visitor, boolean all) {
        return all ? stores.histories().underWay() : stores.histories().underWay(visitor.memberId());
    }

    private static Map<String, List<History>> byGrower(List<History> histories) {
        Map<String, List<History>> by = new TreeMap<>();
        histories.forEach(
                history -> by.computeIfAbsent(history.sowing().grower().name(), grower -> new ArrayList<>())
                        .add(history));
        return by;
    }
}
