package warmshelf.web;

import java.util.Optional;

/** What the pages ask the group's records about: who comes in by a session token, and whose doors these are. */
public interface Doors {
    /** The member whose session the token opens; empty when it is unknown, expired or ended. */
    Optional<Visitor> visitor(String sessionToken);

    /** Empty before the group is opened. */
    Optional<GroupFace> group();
}
