package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

/**
 * The share of seedlings that live from emergence until planting out. It starts from common practice, to sow 10 to 20 % extra,
 * taken as 18 of 20 seedlings, and follows what became of the group's own.
 *
 * @param lived seedlings that lived, with those of common practice
 * @param seedlings that came up, with those of common practice
 * @param sowings of the group that count in it
 */
public record Survival(int lived, int seedlings, int sowings) {
    /** Nothing of one's own yet. */
    public static final Survival COMMON_PRACTICE = new Survival(18, 20, 0);

    /** The same after so many sowings more, of which so many seedlings lived of those that were up. */
    Survival after(int moreLived, int ofSeedlings, int moreSowings) {
        return new Survival(lived + moreLived, seedlings + ofSeedlings, sowings + moreSowings);
    }

    /** The share expected to live: more than 0 and less than 1. */
    public double share() {
        return (double) lived / seedlings;
    }

    /** For example '10 in 100 seedlings are lost later (common practice)'. */
    public String words() {
        long lost = Math.round(100 * (1 - share()));
        String from = switch (sowings) {
            case 0 -> SAY.lostByPractice();
            case 1 -> SAY.lostInOne();
            default -> SAY.lostInMany(sowings);
        };
        return SAY.lostLater(lost, from);
    }
}
