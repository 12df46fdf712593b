package warmshelf.exchange;

/**
 * Why a row cannot be taken in.
 *
 * @param row as a spreadsheet numbers it
 * @param column empty: it is about the row as a whole
 * @param sentence with what was given and what is accepted
 */
public record RowTrouble(long row, String column, String sentence) {}
