package warmshelf.frost;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import warmshelf.crop.Hardiness;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.frost.evidence.Garden;
import warmshelf.frost.evidence.GardenFrost;
import warmshelf.frost.evidence.Gardens;
import warmshelf.frost.evidence.GroupEvidence;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.Countries;

/** The frost page: a member's own frost dates, or those of a place they ask for. */
public final class FrostPages implements Pages {
    private final FrostSource source;
    private final Gardens gardens;
    private final Function<UUID, Map<Hardiness, Double>> accepted;
    private final Supplier<List<String>> coordinators;

    /**
     * Makes the page.
     *
     * @param accepted the chances of a frost that a member has chosen for classes of plants, where not the usual ones
     * @param coordinators the names of those who can bring in evidence for everybody
     */
    public FrostPages(
            FrostSource source, Function<UUID, Map<Hardiness, Double>> accepted, Supplier<List<String>> coordinators) {
        this.source = source;
        this.gardens = new Gardens(source);
        this.accepted = accepted;
        this.coordinators = coordinators;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/frost", this::show, Role.MEMBER);
    }

    private void show(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Garden.Postcode home = new Garden.Postcode(visitor.country(), visitor.postcode());
        Optional<Garden> own = gardens.ofMember(visitor.memberId(), visitor.country(), visitor.postcode());
        FrostForm form = FrostForm.of(ctx.queryParamMap(), gardens, home, own.orElse(null), visitor.units());
        FrostPage page = page(form, visitor);
        boolean asked = !ctx.queryParamMap().isEmpty();
        if (!asked && page.view() == null) {
            Respond.page(ctx, "frost/first.peb", new FirstPage(first(visitor, own.isPresent()), FrostForm.blank(home)));
            return;
        }
        if (asked && !form.problems().isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        boolean isOwn = own.isPresent() && form.garden().equals(own);
        Respond.page(ctx, "frost/show.peb", new DatesPage(page, form, isOwn));
    }

    /** Where nothing is known yet that frost dates could rest on. */
    private record FirstPage(FirstEvidence first, FrostForm form) {}

    /** @param own whether they are the dates of the visitor's own garden */
    private record DatesPage(FrostPage page, FrostForm form, boolean own) {}

    private FirstEvidence first(Visitor visitor, boolean placed) {
        String country = Countries.byName().stream()
                .filter(each -> each.value().equals(visitor.country()))
                .map(Choice::words)
                .findFirst()
                .orElse(visitor.country());
        return new FirstEvidence(visitor.postcode(), country, placed, coordinators.get());
    }

    private FrostPage page(FrostForm form, Visitor visitor) {
        Optional<Garden> garden = form.garden();
        if (garden.isEmpty()) {
            return FrostPage.unknown(visitor.season(), form.similar());
        }
        GroupEvidence evidence = source.evidence();
        if (GardenFrost.of(garden.get(), evidence, Threshold.FROST).isEmpty()) {
            form.refuseUnknown(garden.get());
            return FrostPage.unknown(visitor.season(), form.similar());
        }
        return FrostPage.of(
                threshold -> GardenFrost.of(garden.get(), evidence, threshold).orElseThrow(),
                visitor.season(),
                accepted.apply(visitor.memberId()),
                visitor.units());
    }
}
