package warmshelf.allocation;

/** What the placing says to a request: space, or the reason why there is none. */
public sealed interface Answer {
    record Space(Offer offer) implements Answer {}

    record None(NoSpace reason) implements Answer {}
}
