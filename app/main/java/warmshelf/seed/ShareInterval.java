package warmshelf.seed;

/** The range within which a share is expected, both ends 0 to 1. */
public record ShareInterval(double low, double high) {}
