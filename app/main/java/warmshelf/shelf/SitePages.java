package warmshelf.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** What stands where, for all to read; coordinators add and change sites and racks. */
public final class SitePages implements Pages {
    private static final String SITE_FORM = "shelf/site.peb";
    private static final String RACK_FORM = "shelf/rack.peb";

    private final ShelvingStore shelving;
    private final SiteStore sites;
    private final RackStore racks;

    public SitePages(ShelvingStore shelving, SiteStore sites, RackStore racks) {
        this.shelving = shelving;
        this.sites = sites;
        this.racks = racks;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/sites", this::list, Role.MEMBER);
        routes.get("/sites/new", this::newSite, Role.COORDINATOR);
        routes.post("/sites", this::addSite, Role.COORDINATOR);
        routes.get("/sites/{id}/change", this::siteAsItIs, Role.COORDINATOR);
        routes.post("/sites/{id}/change", this::changeSite, Role.COORDINATOR);
        routes.get("/sites/{id}/racks/new", this::newRack, Role.COORDINATOR);
        routes.post("/sites/{id}/racks", this::addRack, Role.COORDINATOR);
        routes.get("/sites/racks/{id}/change", this::rackAsItIs, Role.COORDINATOR);
        routes.post("/sites/racks/{id}/change", this::changeRack, Role.COORDINATOR);
    }

    private void list(Context ctx) {
        Respond.page(ctx, "shelf/sites.peb", new ListPage(shelving.all()));
    }

    private record ListPage(List<Site> sites) {}

    private void newSite(Context ctx) {
        boolean fahrenheit = Visitor.of(ctx).units().inFahrenheit();
        StandEditPages.show(
                ctx, addSitePage(new FormReader(SiteForm.blank(shelving.all().size() + 1, fahrenheit))));
    }

    private void addSite(Context ctx) {
        StandEditPage page = addSitePage(new FormReader(ctx.formParamMap()));
        SiteDraft draft = SiteForm.read(page.form());
        StandEditPages.give(
                ctx,
                page,
                () -> sites.add(draft, Visitor.of(ctx).memberId()),
                "Site %s is added.".formatted(draft.name()));
    }

    private void siteAsItIs(Context ctx) {
        Site site = site(ctx);
        StandEditPages.show(ctx, changeSitePage(site, new FormReader(SiteForm.typed(site))));
    }

    private void changeSite(Context ctx) {
        Site site = site(ctx);
        StandEditPage page = changeSitePage(site, new FormReader(ctx.formParamMap()));
        SiteDraft draft = SiteForm.read(page.form());
        int version = StandEditPages.version(page);
        StandEditPages.give(
                ctx,
                page,
                () -> sites.change(site.id(), version, draft, Visitor.of(ctx).memberId()),
                "Site %s is changed.".formatted(draft.name()));
    }

    private void newRack(Context ctx) {
        Site site = site(ctx);
        StandEditPages.show(
                ctx,
                addRackPage(site, new FormReader(RackForm.blank(site.racks().size() + 1))));
    }

    private void addRack(Context ctx) {
        Site site = site(ctx);
        StandEditPage page = addRackPage(site, new FormReader(ctx.formParamMap()));
        RackDraft draft = RackForm.read(page.form());
        StandEditPages.give(
                ctx,
                page,
                () -> racks.add(site.id(), draft, Visitor.of(ctx).memberId()),
                "Rack %s is added.".formatted(draft.name()));
    }

    private void rackAsItIs(Context ctx) {
        Rack rack = rack(ctx);
        StandEditPages.show(ctx, changeRackPage(rack, new FormReader(RackForm.typed(rack))));
    }

    private void changeRack(Context ctx) {
        Rack rack = rack(ctx);
        StandEditPage page = changeRackPage(rack, new FormReader(ctx.formParamMap()));
        RackDraft draft = RackForm.read(page.form());
        int version = StandEditPages.version(page);
        StandEditPages.give(
                ctx,
                page,
                () -> racks.change(rack.id(), version, draft, Visitor.of(ctx).memberId()),
                "Rack %s is changed.".formatted(draft.name()));
    }

    private Site site(Context ctx) {
        return shelving.site(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private Rack rack(Context ctx) {
        return shelving.rack(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private static StandEditPage addSitePage(FormReader form) {
        return StandEditPage.adding(SITE_FORM, "Add a site", "/sites", form);
    }

    private static StandEditPage changeSitePage(Site site, FormReader form) {
        return StandEditPage.changing(
                SITE_FORM,
                "Change site " + site.name(),
                "/sites/%s/change".formatted(site.id()),
                form,
                site.words(),
                site.version());
    }

    private static StandEditPage addRackPage(Site site, FormReader form) {
        return StandEditPage.adding(
                RACK_FORM, "Add a rack to " + site.name(), "/sites/%s/racks".formatted(site.id()), form);
    }

    private static StandEditPage changeRackPage(Rack rack, FormReader form) {
        return StandEditPage.changing(
                RACK_FORM,
                "Change rack " + rack.name(),
                "/sites/racks/%s/change".formatted(rack.id()),
                form,
                rack.words(),
                rack.version());
    }
}
