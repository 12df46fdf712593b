package warmshelf.web;

import java.util.Optional;
import java.util.UUID;

/** What the pages ask the group's records about: who comes in by a session token, and whose doors these are. */
public interface Doors {
    /** The member whose session the token opens; empty when it is unknown, expired or ended. */
    Optional<Visitor> visitor(String sessionToken);

    /** Ends the session that the token opens; one that is gone already stays gone. */
    void end(String sessionToken, UUID memberId);

    /** Empty before the group is opened. */
    Optional<GroupFace> group();
}
