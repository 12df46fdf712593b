package warmshelf.bench;

import warmshelf.allocation.plan.PlanInstances;
import warmshelf.allocation.plan.PlanQuestion;
import warmshelf.allocation.plan.search.Outcome;
import warmshelf.allocation.plan.search.Planner;
import warmshelf.allocation.plan.search.Planner.Manner;

/** Plans seeded seasons in every way there is and prints what each gives, side by side. */
public final class PlanBench {
    private PlanBench() {}

    public static void main(String[] arguments) {
        System.out.printf(
                "%-28s %5s %11s %7s %7s %6s %6s %8s%n",
                "season", "asked", "first-come", "greedy", "search", "bound", "gap", "seconds");
        String only = arguments.length > 0 ? arguments[0] : "";
        for (long seed = 1; seed <= 3; seed++) {
            run("60 crowded, seed " + seed, only, PlanInstances.crowded(60, 1.3, seed), 5);
        }
        for (long seed = 1; seed <= 2; seed++) {
            run("300 crowded, seed " + seed, only, PlanInstances.crowded(300, 1.3, seed), 30);
        }
        run("1000 crowded", only, PlanInstances.crowded(1_000, 1.3, 1), 60);
        run("planted, 3 mats", only, PlanInstances.planted(3, 84, 1), 20);
        run("planted, 8 mats", only, PlanInstances.planted(8, 84, 2), 20);
    }

    private static void run(String name, String only, PlanQuestion question, int seconds) {
        if (name.startsWith(only)) {
            row(name, question, seconds);
            row(name + ", alike", PlanInstances.alike(question), seconds);
        }
    }

    private static void row(String name, PlanQuestion question, int seconds) {
        Outcome firstCome = plan(question, Manner.FIRST_COME, seconds);
        Outcome greedy = plan(question, Manner.GREEDY, seconds);
        Outcome search = plan(question, Manner.SEARCH, seconds);
        double gap = 100.0 * (search.placedAtMost() - search.placed()) / search.placedAtMost();
        System.out.printf(
                "%-28s %5d %11d %7d %7d %6d %5.1f%% %8.1f  mats %d fair %s shift %d%n",
                name,
                question.requests().size(),
                firstCome.placed(),
                greedy.placed(),
                search.placed(),
                search.placedAtMost(),
                gap,
                search.seconds(),
                question.mats().size(),
                search.cutShort(),
                search.shiftDays());
    }

    private static Outcome plan(PlanQuestion question, Manner manner, int seconds) {
        return Planner.plan(question, manner, seconds, 1, progress -> {}, () -> false);
    }
}
