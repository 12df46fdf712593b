package warmshelf.placing;

import java.util.List;
import java.util.Map;
import warmshelf.allocation.SpaceRequest;
import warmshelf.shelf.AddressedSiteStore;
import warmshelf.web.SiteRight;
import warmshelf.web.Visitor;

/** The form by which somebody lays a request on a place, with the places on which they may decide. */
final class PlacementView {
    private final RequestWishes wishes;
    private final AddressedSiteStore sites;

    PlacementView(RequestWishes wishes, AddressedSiteStore sites) {
        this.wishes = wishes;
        this.sites = sites;
    }

    /** @throws warmshelf.web.Refusal when the place is at a site on which they may not decide */
    PlacementForm form(Map<String, List<String>> typed, SpaceRequest request, Visitor visitor) {
        PlacementForm form = new PlacementForm(
                typed, request, wishes.board(visitor.today(), visitor.reach()), visitor.today(), visitor.units());
        SiteRight.require(visitor, sites.ofPlace(form.placeId()));
        return form;
    }
}
