package warmshelf.guide;

/**
 * Days of a row of practice that dates are reckoned with: the same that the texts say.
 *
 * @param least the smaller of its two figures
 * @param most the larger
 */
public record PracticeDays(int least, int most) {
    private static final int DAYS_OF_A_WEEK = 7;

    /**
     * The row of a topic and item, weeks turned into days.
     *
     * @throws IllegalArgumentException when there is none, or it has no figure
     */
    public static PracticeDays of(String topic, String item) {
        PracticeRow row = PracticeTable.bundled().row(topic, item);
        Amount amount = row.amount()
                .orElseThrow(() -> new IllegalArgumentException("'%s, %s' has no figure".formatted(topic, item)));
        int each = row.unit().equals("weeks") ? DAYS_OF_A_WEEK : 1;
        return new PracticeDays(((int) amount.low()) * each, ((int) amount.high()) * each);
    }
}
