package warmshelf.bench;

import java.lang.management.ManagementFactory;
import warmshelf.plan.engine.PlanInstances;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.search.Planner;
import warmshelf.plan.engine.search.Planner.Manner;
import warmshelf.plan.engine.search.RatedPlan;

/**
 * Plans seeded seasons in every way there is and prints what each gives, side by side. An argument picks by the name's start; a
 * second multiplies the seconds, for a machine that is busy with something else.
 */
public final class PlanBench {
    private static int patience = 1;

    private PlanBench() {}

    public static void main(String[] arguments) {
        String only = arguments.length > 0 ? arguments[0] : "";
        patience = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 1;
        System.out.println(
                "| season | mats | first come | greedy | search | with CP-SAT | bound by prices | bound | gap | shift"
                        + " | s | cut |");
        System.out.println("|---|---|---|---|---|---|---|---|---|---|---|---|");
        for (long startingNumber = 1; startingNumber <= 6; startingNumber++) {
            both("60, starting number " + startingNumber, only, PlanInstances.crowded(60, 1.3, startingNumber), 5);
        }
        both("300", only, PlanInstances.crowded(300, 1.3, 1), 30);
        both("1000", only, PlanInstances.crowded(1_000, 1.3, 1), 60);
        row("planted, 3 mats", only, PlanInstances.planted(3, 84, 1), 20);
        row("planted, 8 mats", only, PlanInstances.planted(8, 84, 2), 20);
        System.out.printf(
                "load of the machine at the end: %.1f%n",
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }

    /** With three choices a member, and with every request its own member's first, so that only number counts. */
    private static void both(String name, String only, PlanQuestion question, int seconds) {
        row(name + ", choices", only, question, seconds);
        row(name + ", alike", only, PlanInstances.alike(question), seconds);
    }

    private static void row(String name, String only, PlanQuestion question, int seconds) {
        if (!name.startsWith(only)) {
            return;
        }
        RatedPlan search = plan(question, Manner.SEARCH, seconds);
        System.out.printf(
                "| %s | %d | %d | %d | %d | %d | %d | %d | %.1f %% | %d | %.1f | %s |%n",
                name,
                question.mats().size(),
                plan(question, Manner.FIRST_COME, seconds).placed(),
                plan(question, Manner.GREEDY, seconds).placed(),
                search.placedBySearch(),
                search.placed(),
                search.boundByRoom(),
                search.placedAtMost(),
                100.0 * (search.placedAtMost() - search.placed()) / search.placedAtMost(),
                search.shiftDays(),
                search.seconds(),
                search.cutShort() ? "yes" : "no");
    }

    private static RatedPlan plan(PlanQuestion question, Manner manner, int seconds) {
        return Planner.plan(question, manner, patience * seconds, 1, progress -> {}, () -> false);
    }
}
