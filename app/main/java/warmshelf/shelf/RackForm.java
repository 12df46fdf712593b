package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.words.FormReader;

/** Reads what was typed of a rack. */
public final class RackForm {
    private RackForm() {}

    /** What was typed as a draft; to be used only if the reader is ok afterwards. */
    public static RackDraft read(FormReader reader) {
        return new RackDraft(
                reader.requiredText("name", SAY.rackNameField(), 40),
                reader.wholeNumber("walkOrder", SAY.walkOrderField(), 1, 999));
    }

    /** The site on which it is to stand; left out: where it stands. */
    static UUID site(FormReader reader, Rack rack, List<Site> sites) {
        if (reader.text("site").isEmpty()) {
            return rack.siteId();
        }
        String chosen = reader.choice(
                "site",
                SAY.siteField(),
                sites.stream().map(site -> site.id().toString()).toList());
        return reader.problems().containsKey("site") ? rack.siteId() : UUID.fromString(chosen);
    }

    static Map<String, List<String>> typed(Rack rack) {
        return Map.of(
                "name", List.of(rack.name()),
                "site", List.of(rack.siteId().toString()),
                "walkOrder", List.of(String.valueOf(rack.walkOrder())),
                "version", List.of(String.valueOf(rack.version())));
    }

    static Map<String, List<String>> blank(int walkOrder) {
        return Map.of("walkOrder", List.of(String.valueOf(walkOrder)));
    }
}
