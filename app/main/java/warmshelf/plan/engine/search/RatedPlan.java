package warmshelf.plan.engine.search;

import warmshelf.plan.engine.SeasonPlan;

/**
 * A plan and how good it is.
 *
 * @param placedAtMost proven: no plan places more requests
 * @param optimal proven: no plan gives more members their first choice, or their second and so on, or places more
 * @param shiftDays the sum of days between starts and ideal starts
 * @param placedBySearch how many the search alone placed, before the solver's plan was looked at
 * @param boundByRoom the bound from prices on room alone, before the solver's
 * @param cutShort whether the clock or a cancel ended it, so that another run may give another plan
 */
public record RatedPlan(
        SeasonPlan plan,
        int placed,
        int placedAtMost,
        boolean optimal,
        long shiftDays,
        double seconds,
        int placedBySearch,
        int boundByRoom,
        boolean cutShort) {}
