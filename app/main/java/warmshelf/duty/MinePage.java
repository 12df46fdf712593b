package warmshelf.duty;

import java.util.List;
import warmshelf.words.FormReader;

/**
 * When a member can look, and the days they have.
 *
 * @param whose the member
 * @param own whether that is the visitor
 * @param members whom the visitor may choose instead; empty: nobody
 * @param sites with their weekdays
 * @param away days on which the member cannot look
 * @param turns days on which they are on duty
 * @param standing days on which they stand in
 */
record MinePage(
        Named whose,
        boolean own,
        List<Named> members,
        List<WillingForm.SiteLine> sites,
        List<Away> away,
        List<MinePages.OwnTurn> turns,
        List<MinePages.OwnTurn> standing,
        FormReader form) {}
