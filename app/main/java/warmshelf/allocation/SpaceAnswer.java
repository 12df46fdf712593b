package warmshelf.allocation;

/** What the placing says to a request: space, or the reason why there is none. */
public sealed interface SpaceAnswer {
    record Space(SpaceOffer offer) implements SpaceAnswer {}

    record None(NoSpace reason) implements SpaceAnswer {}
}
