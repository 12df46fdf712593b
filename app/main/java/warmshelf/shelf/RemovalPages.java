package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.UUID;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** Coordinators delete a site, rack, shelf or mat that nobody ever used; what was used stays, as history does. */
public final class RemovalPages implements Pages {
    private final PartView words;
    private final RemovalStore removals;

    public RemovalPages(ShelvingStore shelving, RemovalStore removals) {
        this.words = new PartView(shelving);
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
                        words.of(part, id),
                        ctx.path(),
                        removals.against(part, id, visitor.today())
                                .map(no -> no.words(visitor.units()))
                                .orElse("")));
    }

    private void delete(Context ctx, ShelvingPart part) {
        UUID id = Respond.id(ctx, "id");
        Visitor visitor = Visitor.of(ctx);
        String what = words.of(part, id);
        Decisions.doneOr(removals.remove(part, id, what, visitor.today(), visitor.memberId()), visitor.units());
        Respond.seeOther(ctx, "/sites", SAY.isDeleted(what));
    }
}
