package warmshelf.plan.engine;

/**
 * A request that got no place.
 *
 * @param reason a sentence that says why
 * @param change a sentence with the cheapest change that would place it, as things stand in the plan
 */
public record Refused(String request, String reason, String change) {}
