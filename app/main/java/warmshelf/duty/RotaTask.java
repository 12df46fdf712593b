package warmshelf.duty;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Days to give out, in numbers: turns by day, people by rank (the least served first). A plan holds for each turn the number
 * of a person, or {@link #NOBODY}.
 */
final class RotaTask {
    static final int NOBODY = -1;

    private final RotaBook book;
    private final List<Turn> turns;
    private final List<Volunteer> people;
    private final int[][] able;
    private final int[] served;
    private final LocalDate first;
    private final int days;
    private final boolean[][] onDuty;

    RotaTask(List<Turn> empty, RotaBook book) {
        this.book = book;
        // stable: within a day the sites keep the order given
        this.turns = empty.stream().sorted(Comparator.comparing(Turn::day)).toList();
        this.people = book.volunteers();
        this.able = turns.stream()
                .map(turn -> IntStream.range(0, people.size())
                        .filter(person -> book.canTake(people.get(person), turn))
                        .toArray())
                .toArray(int[][]::new);
        this.served =
                people.stream().mapToInt(person -> book.served(person.id())).toArray();
        // a day before and one after, whose duties count for days in a row
        this.first = turns.isEmpty() ? LocalDate.EPOCH : turns.get(0).day().minusDays(1);
        this.days = turns.isEmpty() ? 0 : day(turns.size() - 1) + 2;
        this.onDuty = new boolean[people.size()][days];
        for (int person = 0; person < people.size(); person++) {
            Set<LocalDate> taken = book.daysOf(people.get(person).id());
            for (int day = 0; day < days; day++) {
                onDuty[person][day] = taken.contains(first.plusDays(day));
            }
        }
    }

    List<Turn> turns() {
        return turns;
    }

    List<Volunteer> people() {
        return people;
    }

    /** The numbers of those who can take a turn, by rank. */
    int[] able(int turn) {
        return able[turn];
    }

    int served(int person) {
        return served[person];
    }

    /** The number of a turn's day; 0 is the day before the first. */
    int day(int turn) {
        return (int) (turns.get(turn).day().toEpochDay() - first.toEpochDay());
    }

    boolean isTogether(int turn) {
        return book.isTogether(turns.get(turn).site());
    }

    boolean clash(int one, int other) {
        return book.clash(turns.get(one), turns.get(other));
    }

    /** Whether a person may have a turn beside what the plan gives them already. */
    boolean fits(int[] plan, int turn, int person) {
        for (int other = 0; other < plan.length; other++) {
            if (other != turn && plan[other] == person && clash(turn, other)) {
                return false;
            }
        }
        return true;
    }

    RotaScore score(int[] plan) {
        int empty = 0;
        int[] counts = served.clone();
        boolean[][] taken = new boolean[people.size()][];
        for (int person = 0; person < taken.length; person++) {
            taken[person] = onDuty[person].clone();
        }
        for (int turn = 0; turn < plan.length; turn++) {
            if (plan[turn] == NOBODY) {
                empty++;
            } else {
                counts[plan[turn]]++;
                taken[plan[turn]][day(turn)] = true;
            }
        }
        return new RotaScore(empty, inARow(taken), squares(counts));
    }

    private static int inARow(boolean[][] taken) {
        int pairs = 0;
        for (boolean[] ofPerson : taken) {
            for (int day = 1; day < ofPerson.length; day++) {
                pairs += ofPerson[day] && ofPerson[day - 1] ? 1 : 0;
            }
        }
        return pairs;
    }

    static long squares(int[] counts) {
        return IntStream.of(counts).mapToLong(count -> (long) count * count).sum();
    }

    /** The duties that are there already, by person and day. */
    boolean[][] onDuty() {
        return onDuty;
    }

    int[] served() {
        return served.clone();
    }
}
