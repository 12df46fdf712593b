/**
 * A coordinator's decisions on single requests and stays: placing, refusing, moving, undoing, freeing; a mat's
 * set-points.
 *
 * <p><b>Moves.</b> {@code MoveJudge} says what a move would come to before anything is saved; {@code MoveStore}
 * holds the sowing, then the mats in the order of their ids, then the stay, compares its version, and lets the same
 * keys judge. {@code stay_move} keeps the old and the new, so that whoever comes second is told what changed and
 * one's own last move can be undone. What lies there already is carried: its stay ends today and another begins. A
 * place under a light that is booked for the end of a stay follows it, begins at once when the tray comes off early,
 * and is given up when the tray goes home ({@code StayStore.followUnderLight}, {@code TickStore}). {@code
 * static/js/board.js} only asks and shows; each tray links to a page that does the same with buttons.
 */
package warmshelf.placing;
