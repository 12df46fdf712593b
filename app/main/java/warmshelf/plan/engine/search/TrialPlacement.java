package warmshelf.plan.engine.search;

/**
 * Where and when a request lies.
 *
 * @param mask its quarters within the place, bit 0 for quarter 1
 * @param warm the set-points that may be set while it lies there
 * @param litSurface the lit shelf it goes to afterwards; -1 for none
 */
record TrialPlacement(
        int mat,
        int place,
        int mask,
        int from,
        int to,
        long warm,
        int litSurface,
        int litPlace,
        int litMask,
        int litTo) {
    static final int NONE = -1;

    static TrialPlacement onMat(int mat, int place, int mask, int from, int to, long warm) {
        return new TrialPlacement(mat, place, mask, from, to, warm, NONE, 0, 0, 0);
    }

    TrialPlacement then(int surface, int litAt, int withMask, int until) {
        return new TrialPlacement(mat, place, mask, from, to, warm, surface, litAt, withMask, until);
    }
}
