package warmshelf.plan.engine.search;

/**
 * How much the planner may do. Its work is counted, so that the same effort gives the same plan on every machine; the clock only
 * stops what a slow or busy machine cannot finish.
 *
 * @param seconds of work, as many looks and steps as a plain machine does in that time
 * @param clockSeconds after which what was found so far is the answer
 */
record Effort(double seconds, double clockSeconds) {
    /** So many seconds of work, ended by the clock after as many. */
    static Effort of(int seconds) {
        return new Effort(seconds, seconds);
    }
}
