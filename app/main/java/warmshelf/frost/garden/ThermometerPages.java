package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.Degrees;

/** The thermometers that hang outdoors: which there are, a new one, one taken down. */
final class ThermometerPages implements Pages {
    private static final Choice MINE = new Choice("mine", SAY.mineChoice());
    private static final Choice GROUP = new Choice(NewThermometerForm.GROUP, SAY.groupChoice());

    private final ThermometerStore thermometers;
    private final GardenStore gardens;

    ThermometerPages(ThermometerStore thermometers, GardenStore gardens) {
        this.thermometers = thermometers;
        this.gardens = gardens;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/frost/thermometers", this::list, Role.MEMBER);
        routes.get("/frost/thermometers/new", this::blank, Role.MEMBER);
        routes.post("/frost/thermometers", this::add, Role.MEMBER);
        routes.post("/frost/thermometers/{id}/retirement", this::retire, Role.MEMBER);
    }

    /** A line of the list; what was not noted is said in words. */
    public record Line(
            UUID id,
            String name,
            String whose,
            String place,
            boolean retired,
            int nights,
            @Nullable String coldest,
            @Nullable LocalDate last) {}

    private record ListPage(List<Line> lines) {}

    private void list(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Map<UUID, NotedNights> noted = thermometers.noted(visitor.today());
        List<Line> lines = thermometers.seenBy(visitor.memberId(), visitor.coordinator()).stream()
                .map(each -> line(each, noted.getOrDefault(each.id(), NotedNights.NONE), visitor))
                .toList();
        Respond.page(ctx, "frost/thermometers.peb", new ListPage(lines));
    }

    private static Line line(Thermometer thermometer, NotedNights noted, Visitor visitor) {
        Double coldest = noted.coldestC();
        return new Line(
                thermometer.id(),
                thermometer.name(),
                thermometer.whose(visitor.memberId()),
                Height.words(thermometer.point(), visitor.units()),
                thermometer.retired(),
                noted.nights(),
                coldest == null ? null : SAY.nightIs(Degrees.words(coldest, visitor.units()), NightWords.of(coldest)),
                noted.last());
    }

    private void blank(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        NewThermometerForm form = NewThermometerForm.blank(gardens.point(visitor.memberId()), visitor.units());
        Respond.page(ctx, "frost/thermometer-new.peb", NewPage.of(visitor, form));
    }

    private void add(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        NewThermometerForm form = NewThermometerForm.of(
                ctx.formParamMap(), gardens.point(visitor.memberId()), visitor.memberId(), visitor.units());
        if (form.isForTheGroup() && !visitor.coordinator()) {
            throw Refusal.forbidden(SAY.onlyCoordinatorAdds());
        }
        if (form.thermometer().isEmpty()) {
            Respond.again(ctx, "frost/thermometer-new.peb", NewPage.of(visitor, form));
            return;
        }
        UUID id = thermometers.add(form.thermometer().get(), visitor.memberId());
        Respond.seeOther(ctx, "/frost/thermometers/" + id, SAY.added());
    }

    /** @param owners whose the visitor may say that it is */
    private record NewPage(NewThermometerForm form, List<Choice> owners, String heightUnit) {
        static NewPage of(Visitor visitor, NewThermometerForm form) {
            return new NewPage(
                    form, visitor.coordinator() ? List.of(MINE, GROUP) : List.of(MINE), Height.unit(visitor.units()));
        }
    }

    private void retire(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Thermometer thermometer = thermometers
                .find(Respond.id(ctx, "id"))
                .filter(each -> each.mayBeSeenBy(visitor.memberId(), visitor.coordinator()))
                .orElseThrow(Refusal::notFound);
        if (!thermometer.mayBeRetiredBy(visitor.memberId(), visitor.coordinator())) {
            throw Refusal.forbidden(SAY.onlyCoordinatorRetires());
        }
        boolean retired = thermometers.retire(thermometer.id(), visitor.memberId());
        Respond.seeOther(
                ctx,
                "/frost/thermometers",
                retired ? SAY.retired(thermometer.name()) : SAY.retiredBefore(thermometer.name()));
    }
}
