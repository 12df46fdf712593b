package warmshelf.timeline;

import warmshelf.guide.PracticeDays;

/** A number of days: the first that is likely, the usual, and the last that is likely. */
record LikelyDays(int first, int usual, int last) {
    LikelyDays {
        if (first < 0 || first > usual || usual > last) {
            throw new IllegalArgumentException(
                    "days run from few to many, was %d, %d, %d".formatted(first, usual, last));
        }
    }

    /** From the least to the most of them, with the middle as the usual. */
    static LikelyDays of(PracticeDays days) {
        return new LikelyDays(days.least(), (days.least() + days.most()) / 2, days.most());
    }

    /** Whole days, rounded outwards: the first down, the last up. At least one. */
    static LikelyDays rounded(double first, double usual, double last) {
        int middle = (int) Math.max(1, Math.round(usual));
        return new LikelyDays((int) Math.min(middle, Math.max(1, Math.floor(first))), middle, (int)
                Math.max(middle, Math.ceil(last)));
    }
}
