package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.UUID;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Counted;

/** Coordinators delete a site, rack, shelf or mat that nobody ever used; what was used stays, as history does. */
public final class RemovalPages implements Pages {
    private final ShelvingStore shelving;
    private final RemovalStore removals;

    public RemovalPages(ShelvingStore shelving, RemovalStore removals) {
        this.shelving = shelving;
        this.removals = removals;
    }

    @Override
    public void register(RoutesConfig routes) {
        part(routes, "/sites/{id}/deletion", ShelvingPart.SITE);
        part(routes, "/sites/racks/{id}/deletion", ShelvingPart.RACK);
        part(routes, "/sites/shelves/{id}/deletion", ShelvingPart.SHELF);
        part(routes, "/sites/mats/{id}/deletion", ShelvingPart.MAT);
    }

    private void part(RoutesConfig routes, String address, ShelvingPart part) {
        Role role = part == ShelvingPart.SITE ? Role.COORDINATOR : Role.SITE_COORDINATOR;
        routes.get(address, ctx -> show(ctx, part), role);
        routes.post(address, ctx -> delete(ctx, part), role);
    }

    /**
     * Asks before it is deleted.
     *
     * @param what it is
     * @param against why it is not deleted; empty: it can be
     */
    private record DeletionPage(String what, String address, String against) {}

    private void show(Context ctx, ShelvingPart part) {
        UUID id = Respond.id(ctx, "id");
        Visitor visitor = Visitor.of(ctx);
        Respond.page(
                ctx,
                "shelf/deletion.peb",
                new DeletionPage(
                        words(part, id),
                        ctx.path(),
                        removals.against(part, id, visitor.today())
                                .map(no -> no.words(visitor.units()))
                                .orElse("")));
    }

    private void delete(Context ctx, ShelvingPart part) {
        UUID id = Respond.id(ctx, "id");
        Visitor visitor = Visitor.of(ctx);
        String words = words(part, id);
        Decisions.doneOr(removals.remove(part, id, words, visitor.today(), visitor.memberId()), visitor.units());
        Respond.seeOther(ctx, "/sites", SAY.isDeleted(words));
    }

    private String words(ShelvingPart part, UUID id) {
        return (switch (part) {
                    case SITE -> shelving.site(id).map(site -> SAY.theSite(site.name()));
                    case RACK -> shelving.rack(id).map(this::rack);
                    case SHELF -> shelving.shelf(id).map(this::shelf);
                    case MAT -> shelving.mat(id).map(mat -> SAY.theMat(mat.name()));
                })
                .orElseThrow(Refusal::notFound);
    }

    private String rack(Rack rack) {
        int mats =
                rack.shelves().stream().mapToInt(shelf -> shelf.mats().size()).sum();
        return SAY.theRack(
                rack.name(), Counted.of(rack.shelves().size(), "shelf", "shelves"), Counted.of(mats, "mat", "mats"));
    }

    private String shelf(Shelf shelf) {
        String rack = shelving.rack(shelf.rackId()).map(Rack::name).orElse("");
        return SAY.theShelf(shelf.fromTop(), rack, Counted.of(shelf.mats().size(), "mat", "mats"));
    }
}
