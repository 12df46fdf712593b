package warmshelf.plan.engine;

import static warmshelf.plan.engine.EngineSentences.SAY;

/** How sentences name those who lie somewhere in a plan. */
public interface PlanNames {
    /** By their ids in the file. */
    PlanNames IN_FILE =
            who -> who instanceof PlanParty.OfRequest ? SAY.theRequest(who.id()) : SAY.theFixedStay(who.id());

    /** As a sentence begins with it. */
    String of(PlanParty who);
}
