package warmshelf.shelf;

/** What a coordinator says of a site. */
public record SiteDraft(String name, int walkOrder, Circuit circuit, String note) {}
