package warmshelf.group;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;
import warmshelf.words.PartOfList;

/**
 * Who belongs to the group. What only coordinators see is empty for others.
 *
 * @param name part of a name to which the lists are narrowed; empty: to none
 * @param sitesOf the names of the sites that somebody coordinates who does not coordinate the whole group
 * @param part those who belong to it, as many as a page shows
 * @param gone those who have left, as many as a page shows
 * @param undoable those whose leaving can still be taken back
 * @param links invitations that are open
 * @param madeFor for whom the link was made by which a member joined, where under another name
 * @param onlyHere the address, where it leads to this machine only; else empty
 * @param freshLink the link just made, or empty
 */
record PeoplePage(
        String name,
        Map<UUID, List<String>> sitesOf,
        PartOfList<Member> part,
        List<Member> gone,
        int goneInAll,
        Set<UUID> undoable,
        List<Link> links,
        Map<UUID, String> madeFor,
        String onlyHere,
        FormReader form,
        List<Choice> roles,
        String freshLink) {}
