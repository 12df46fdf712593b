package warmshelf.plan.engine.search;

/**
 * Which quarters of which places are taken on which days: four bits a day, sixteen days a word, so that two weeks of a
 * place are looked at in one or two steps.
 */
final class Occupancy {
    private static final long ONE_QUARTER = 0x1111_1111_1111_1111L;
    private static final int DAYS_A_WORD = 16;

    private final long[][][] taken;

    Occupancy(int[] places, int days) {
        taken = new long[places.length][][];
        for (int surface = 0; surface < places.length; surface++) {
            taken[surface] = new long[places[surface]][(days + DAYS_A_WORD - 1) / DAYS_A_WORD];
        }
    }

    /** The quarters of a place that are taken on any of the days, bit 0 for quarter 1. */
    int busy(int surface, int place, int from, int to) {
        long[] words = taken[surface][place];
        long any = 0;
        int last = (to - 1) >> 4;
        for (int word = from >> 4; word <= last; word++) {
            any |= words[word] & daysOf(word, from, to);
        }
        any |= any >>> 32;
        any |= any >>> 16;
        any |= any >>> 8;
        any |= any >>> 4;
        return (int) (any & 15);
    }

    /** Takes quarters that are free, or frees quarters that are taken. */
    void flip(int surface, int place, int mask, int from, int to) {
        long[] words = taken[surface][place];
        int last = (to - 1) >> 4;
        for (int word = from >> 4; word <= last; word++) {
            words[word] ^= daysOf(word, from, to) & (ONE_QUARTER * mask);
        }
    }

    private static long daysOf(int word, int from, int to) {
        int first = Math.max(0, from - word * DAYS_A_WORD);
        int end = Math.min(DAYS_A_WORD, to - word * DAYS_A_WORD);
        long upTo = end == DAYS_A_WORD ? -1L : (1L << (4 * end)) - 1;
        return upTo & (-1L << (4 * first));
    }
}
