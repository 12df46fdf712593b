package warmshelf.shelf;

/** What a coordinator says of a rack. */
public record RackDraft(String name, int walkOrder) {}
