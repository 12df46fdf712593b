package warmshelf.duty;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Tries every way of giving out an invented group's days, with a reckoning of its own. */
final class Exhaustive {
    private Exhaustive() {}

    static RotaScore best(Invented invented) {
        int[] plan = new int[invented.turns().size()];
        Arrays.fill(plan, -1);
        return best(invented, plan, 0);
    }

    private static RotaScore best(Invented invented, int[] plan, int turn) {
        if (turn == plan.length) {
            return score(invented, plan);
        }
        plan[turn] = -1;
        RotaScore best = best(invented, plan, turn + 1);
        for (int person = 0; person < invented.book().volunteers().size(); person++) {
            if (isAllowed(invented, plan, turn, person)) {
                plan[turn] = person;
                RotaScore with = best(invented, plan, turn + 1);
                best = with.compareTo(best) < 0 ? with : best;
                plan[turn] = -1;
            }
        }
        return best;
    }

    private static boolean isAllowed(Invented invented, int[] plan, int turn, int person) {
        Turn wanted = invented.turns().get(turn);
        if (!invented.book().canTake(invented.book().volunteers().get(person), wanted)) {
            return false;
        }
        for (int other = 0; other < turn; other++) {
            if (plan[other] == person
                    && invented.book().clash(wanted, invented.turns().get(other))) {
                return false;
            }
        }
        return true;
    }

    static RotaScore score(Invented invented, int[] plan) {
        List<Volunteer> people = invented.book().volunteers();
        int empty = 0;
        int inARow = 0;
        long squares = 0;
        for (int given : plan) {
            empty += given < 0 ? 1 : 0;
        }
        for (int person = 0; person < people.size(); person++) {
            Set<LocalDate> before = new HashSet<>();
            long count = 0;
            for (var duty : invented.duties().entrySet()) {
                if (duty.getValue().equals(people.get(person).id())) {
                    before.add(duty.getKey().day());
                    count++;
                }
            }
            // of the days before, only the last counts: those behind it are no choice of the rota's
            before.removeIf(day -> day.isBefore(LocalDate.of(2027, 2, 28)));
            Set<LocalDate> days = new HashSet<>(before);
            for (int turn = 0; turn < plan.length; turn++) {
                if (plan[turn] == person) {
                    days.add(invented.turns().get(turn).day());
                    count++;
                }
            }
            inARow += (int)
                    days.stream().filter(day -> days.contains(day.plusDays(1))).count();
            squares += count * count;
        }
        return new RotaScore(empty, inARow, squares);
    }
}
