package warmshelf.plan.engine;

import warmshelf.shelf.Circuit;

/**
 * An electrical circuit that feeds mats.
 *
 * @param rating its breaker; mats that hold something count as a continuous load, see {@link Circuit#continuousWatts}
 */
public record CircuitFeed(String id, Circuit rating) {}
