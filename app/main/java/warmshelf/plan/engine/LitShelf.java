package warmshelf.plan.engine;

/** A shelf under a light, without bottom heat, where what comes off a mat grows on; same places and quarters as a mat. */
public record LitShelf(String id, int places) {}
