package warmshelf.duty;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Proposes who looks on days that are still empty. It keeps to what people said they can, and to one site a day for each
 * person unless the sites are looked at together. Then, in this order: as many days as possible have somebody; nobody looks on
 * two days in a row if that can be helped; the counts of duties, over all sites, of the last 60 days and those planned, are as
 * even as possible; and of equally good ways the earlier days go to those who have served least, then to those whose last duty
 * is longest ago, then by name.
 *
 * <p>{@link RotaFlow} gives a start that is best in the first and third aim, {@link RotaExchange} betters it by single steps,
 * and {@link RotaSearch} looks through all ways as far as it gets: to the end on small rotas, where the answer is exact.
 */
public final class FairRota {
    private FairRota() {}

    /**
     * What was proposed.
     *
     * @param given who takes which turn, by day
     * @param nobody turns that nobody can take any more, by day
     */
    public record Proposal(Map<Turn, Volunteer> given, List<Turn> nobody) {}

    /** Proposes somebody for each of the turns, none of which may have anybody yet. */
    public static Proposal propose(List<Turn> empty, RotaBook book) {
        RotaTask task = new RotaTask(empty, book);
        int[] plan = RotaSearch.best(task, RotaExchange.better(task, RotaFlow.plan(task)));
        Map<Turn, Volunteer> given = new LinkedHashMap<>();
        List<Turn> nobody = new ArrayList<>();
        for (int turn = 0; turn < plan.length; turn++) {
            if (plan[turn] == RotaTask.NOBODY) {
                nobody.add(task.turns().get(turn));
            } else {
                given.put(task.turns().get(turn), task.people().get(plan[turn]));
            }
        }
        return new Proposal(given, nobody);
    }
}
