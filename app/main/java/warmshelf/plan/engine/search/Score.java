package warmshelf.plan.engine.search;

import java.util.Arrays;

/**
 * How good a plan is, by the aims in their order: members with their first choice, with their second and so on; requests
 * placed; days away from the ideal starts; days on which a mat is warmed; turns of a thermostat. A greater score is better.
 *
 * @param members by rank of choice, how many members have at least one request of that choice placed
 */
// An array for its speed; scores are compared by compareTo alone.
@SuppressWarnings("ArrayRecordComponent")
record Score(int[] members, int placed, long shiftDays, long warmedDays, long turns) implements Comparable<Score> {

    @Override
    public int compareTo(Score other) {
        int byMembers = Arrays.compare(members, other.members);
        if (byMembers != 0) {
            return byMembers;
        }
        if (placed != other.placed) {
            return Integer.compare(placed, other.placed);
        }
        if (shiftDays != other.shiftDays) {
            return Long.compare(other.shiftDays, shiftDays);
        }
        if (warmedDays != other.warmedDays) {
            return Long.compare(other.warmedDays, warmedDays);
        }
        return Long.compare(other.turns, turns);
    }

    /** Two scores are equal when no aim tells them apart. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Score score && compareTo(score) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(members) + placed;
    }
}
