package warmshelf.privacy;

import java.util.List;
import warmshelf.group.Member;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/**
 * What goes and what stays, before somebody is erased.
 *
 * @param self whether the person does it themself
 * @param action where the form goes
 * @param back the page from which one came
 * @param onlyCoordinator whether nobody else coordinates the group
 * @param successors who could
 */
record ErasurePage(
        Member member,
        boolean self,
        String action,
        String back,
        ErasureFigures figures,
        boolean onlyCoordinator,
        List<Choice> successors,
        FormReader form) {}
