package warmshelf.plan.engine;

/** Who lies somewhere in a plan, by the id in the file. */
public sealed interface PlanParty {
    /** In the file. */
    String id();

    /** A request that the plan places. */
    record OfRequest(String id) implements PlanParty {}

    /** A stay that was there before and stays. */
    record OfFixedStay(String id) implements PlanParty {}
}
