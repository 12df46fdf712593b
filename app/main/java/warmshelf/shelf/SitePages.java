package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** What stands where, for all to read; coordinators add and change sites. */
public final class SitePages implements Pages {
    private static final String FORM = "shelf/site.peb";

    private final QuarantineStore quarantine;
    private final ShelvingStore shelving;
    private final SiteStore sites;
    private final RetirementStore retirements;

    public SitePages(ShelvingStore shelving, SiteStore sites, QuarantineStore quarantine, RetirementStore retirements) {
        this.retirements = retirements;
        this.quarantine = quarantine;
        this.shelving = shelving;
        this.sites = sites;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/sites", this::list, Role.MEMBER);
        routes.get("/sites/new", this::newSite, Role.COORDINATOR);
        routes.post("/sites", this::addSite, Role.COORDINATOR);
        routes.get("/sites/{id}/change", this::siteAsItIs, Role.COORDINATOR);
        routes.post("/sites/{id}/change", this::changeSite, Role.COORDINATOR);
    }

    private void list(Context ctx) {
        Respond.page(
                ctx,
                "shelf/sites.peb",
                ListPage.of(
                        shelving.all(),
                        quarantine.shelves(),
                        retirements.read(),
                        Visitor.of(ctx).today()));
    }

    /**
     * All that stands or stood there.
     *
     * @param quarantine the ids of the quarantine shelves
     * @param retired from which day on, by the ids of what is retired
     * @param loads the sites as they burn today, with what is in use alone, by their ids
     */
    private record ListPage(
            List<Site> sites, Set<UUID> quarantine, Map<UUID, LocalDate> retired, Map<UUID, Site> loads) {
        static ListPage of(List<Site> sites, Set<UUID> quarantine, Retirements retired, LocalDate today) {
            return new ListPage(
                    sites,
                    quarantine,
                    retired.parts(),
                    retired.inUse(sites, today).stream().collect(Collectors.toMap(Site::id, site -> site)));
        }
    }

    private void newSite(Context ctx) {
        boolean fahrenheit = Visitor.of(ctx).units().inFahrenheit();
        ShelvingEditPages.show(
                ctx, addSitePage(new FormReader(SiteForm.blank(shelving.all().size() + 1, fahrenheit))));
    }

    private void addSite(Context ctx) {
        ShelvingEditPage page = addSitePage(new FormReader(ctx.formParamMap()));
        SiteDraft draft = SiteForm.read(page.form());
        ShelvingEditPages.give(
                ctx, page, () -> sites.add(draft, Visitor.of(ctx).memberId()), SAY.siteAdded(draft.name()));
    }

    private void siteAsItIs(Context ctx) {
        Site site = site(ctx);
        ShelvingEditPages.show(ctx, changeSitePage(site, new FormReader(SiteForm.typed(site))));
    }

    private void changeSite(Context ctx) {
        Site site = site(ctx);
        ShelvingEditPage page = changeSitePage(site, new FormReader(ctx.formParamMap()));
        SiteDraft draft = SiteForm.read(page.form());
        int version = ShelvingEditPages.version(page);
        ShelvingEditPages.give(
                ctx,
                page,
                () -> sites.change(site.id(), version, draft, Visitor.of(ctx).memberId()),
                SAY.siteChanged(draft.name()));
    }

    private Site site(Context ctx) {
        return shelving.site(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private static ShelvingEditPage addSitePage(FormReader form) {
        return ShelvingEditPage.adding(FORM, SAY.addSite(), "/sites", form);
    }

    private static ShelvingEditPage changeSitePage(Site site, FormReader form) {
        return ShelvingEditPage.changing(
                FORM,
                SAY.changeSite(site.name()),
                "/sites/%s/change".formatted(site.id()),
                form,
                site.words(),
                site.version());
    }
}
