package warmshelf.finding.statistics;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Whether seeds sprouted differently, in speed or share, under several ways. Blocks (one member's tray of each way, say) are compared
 * within themselves, and what they show is added up.
 */
public final class LogRank {
    private LogRank() {}

    /**
     * For times that are known exactly or not at all: observed less expected at each day, with the hypergeometric variance (Mantel
     * 1966; Peto and Peto 1972, J. R. Stat. Soc. A 135, 185-207). Empty where no difference could have shown: one arm, or nothing
     * sprouted.
     */
    public static Optional<TestOutcome> ofExactTimes(List<List<Arm>> blocks) {
        Map<String, Integer> arms = arms(blocks);
        QuadraticForm form = new QuadraticForm(arms.size());
        for (List<Arm> block : blocks) {
            for (double day : days(block)) {
                addDay(form, arms, block, day);
            }
        }
        return form.outcome();
    }

    /**
     * For times known only to lie between two looks: the scores of {@link RankScores}, compared with all ways in which the seeds of
     * a block could have been dealt out (the permutation form; Sun 1996, Stat. Med. 15, 1387-1395; Fay and Shaw 2010, J. Stat.
     * Softw. 36(2)). Needs alike looks for all arms of a block, else later looks pass for later seed.
     */
    public static Optional<TestOutcome> ofTimesBetweenLooks(List<List<Arm>> blocks) {
        Map<String, Integer> arms = arms(blocks);
        QuadraticForm form = new QuadraticForm(arms.size());
        for (List<Arm> block : blocks) {
            addBlock(form, arms, block);
        }
        return form.outcome();
    }

    static Map<String, Integer> arms(List<List<Arm>> blocks) {
        Map<String, Integer> places = new LinkedHashMap<>();
        LinkedHashSet<String> names = new LinkedHashSet<>();
        blocks.forEach(block -> block.forEach(arm -> names.add(arm.name())));
        names.forEach(name -> places.put(name, places.size()));
        return places;
    }

    private static TreeSet<Double> days(List<Arm> block) {
        TreeSet<Double> days = new TreeSet<>();
        for (Arm arm : block) {
            arm.times().stream().filter(SproutingTime::sprouted).forEach(time -> days.add(time.by()));
        }
        return days;
    }

    private static void addDay(QuadraticForm form, Map<String, Integer> arms, List<Arm> block, double day) {
        double[] atRisk = new double[arms.size()];
        double[] came = new double[arms.size()];
        double allAtRisk = 0;
        double allCame = 0;
        for (Arm arm : block) {
            int place = arms.getOrDefault(arm.name(), 0);
            for (SproutingTime time : arm.times()) {
                atRisk[place] += (time.sprouted() ? time.by() : time.after()) >= day ? 1 : 0;
                came[place] += time.by() == day ? 1 : 0;
            }
        }
        for (int i = 0; i < atRisk.length; i++) {
            allAtRisk += atRisk[i];
            allCame += came[i];
        }
        double variance = allAtRisk > 1 ? allCame * (allAtRisk - allCame) / (allAtRisk - 1) : 0;
        for (int i = 0; i < atRisk.length; i++) {
            double part = atRisk[i] / allAtRisk;
            form.add(i, came[i] - allCame * part);
            for (int j = 0; j < atRisk.length; j++) {
                form.add(i, j, variance * part * ((i == j ? 1 : 0) - atRisk[j] / allAtRisk));
            }
        }
    }

    private static void addBlock(QuadraticForm form, Map<String, Integer> arms, List<Arm> block) {
        RankScores scores = RankScores.of(block);
        double[] seeds = new double[arms.size()];
        for (int i = 0; i < block.size(); i++) {
            int place = arms.getOrDefault(block.get(i).name(), 0);
            seeds[place] += block.get(i).times().size();
            form.add(place, scores.sum(i));
        }
        for (int i = 0; i < seeds.length; i++) {
            for (int j = 0; j < seeds.length; j++) {
                form.add(i, j, scores.variance() * seeds[i] * ((i == j ? 1 : 0) - seeds[j] / scores.seeds()));
            }
        }
    }
}
