package warmshelf.duty;

/**
 * Makes a plan better step by step: a turn goes to somebody else, or two turns change hands, as long as that is a better plan.
 * What comes out cannot be bettered by one such step.
 */
final class RotaExchange {
    private final RotaTask task;
    private final int[] plan;
    private RotaScore score;

    private RotaExchange(RotaTask task, int[] plan) {
        this.task = task;
        this.plan = plan.clone();
        this.score = task.score(plan);
    }

    static int[] better(RotaTask task, int[] plan) {
        RotaExchange exchange = new RotaExchange(task, plan);
        while (exchange.giveOne() || exchange.swapTwo()) {
            // every step makes the score less, which cannot go on for ever
        }
        return exchange.plan;
    }

    private boolean giveOne() {
        for (int turn = 0; turn < plan.length; turn++) {
            for (int person : task.able(turn)) {
                if (person != plan[turn] && task.fits(plan, turn, person) && improves(turn, person, turn, person)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean swapTwo() {
        for (int one = 0; one < plan.length; one++) {
            for (int other = one + 1; other < plan.length; other++) {
                if (plan[one] != plan[other] && swaps(one, other)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean swaps(int one, int other) {
        return isAble(one, plan[other]) && isAble(other, plan[one]) && improves(one, plan[other], other, plan[one]);
    }

    private boolean isAble(int turn, int person) {
        return person == RotaTask.NOBODY
                || java.util.Arrays.stream(task.able(turn)).anyMatch(each -> each == person);
    }

    private boolean improves(int one, int toOne, int other, int toOther) {
        int wasOne = plan[one];
        int wasOther = plan[other];
        plan[one] = toOne;
        plan[other] = toOther;
        if (holds(one) && holds(other)) {
            RotaScore then = task.score(plan);
            if (then.isBetterThan(score)) {
                score = then;
                return true;
            }
        }
        plan[other] = wasOther;
        plan[one] = wasOne;
        return false;
    }

    private boolean holds(int turn) {
        return plan[turn] == RotaTask.NOBODY || task.fits(plan, turn, plan[turn]);
    }
}
