package warmshelf.group;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/**
 * Who belongs to the group. What only coordinators see is empty for others.
 *
 * @param gone those who have left
 * @param undoable those whose leaving can still be taken back
 * @param links invitations that are open
 * @param madeFor for whom the link was made by which a member joined, where under another name
 * @param onlyHere the address, where it leads to this machine only; else empty
 * @param freshLink the link just made, or empty
 */
record PeoplePage(
        List<Member> present,
        List<Member> gone,
        Set<UUID> undoable,
        List<Link> links,
        Map<UUID, String> madeFor,
        String onlyHere,
        FormReader form,
        List<Choice> roles,
        String freshLink) {}
