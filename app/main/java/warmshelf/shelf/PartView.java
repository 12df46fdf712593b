package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.util.UUID;
import warmshelf.web.Refusal;
import warmshelf.words.Counted;

/** What a site, rack, shelf or mat is called on the pages that delete or retire it. */
final class PartView {
    private final ShelvingStore shelving;

    PartView(ShelvingStore shelving) {
        this.shelving = shelving;
    }

    /** For example 'mat M1'; nothing is found of what is not there. */
    String of(ShelvingPart part, UUID id) {
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
