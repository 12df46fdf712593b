package warmshelf.reminder;

import java.util.List;
import java.util.UUID;
import warmshelf.group.GroupProfile;

/** A way to tell people things: letters, or notices on phones. */
interface Channel {
    List<Listener> listeners();

    /** Whether somebody was told of a thing already, or is about to be. */
    boolean knows(UUID member, String about);

    /** Lays it ready to be sent. */
    void lay(Listener listener, Telling telling);

    /** Sends what is due. */
    void send(GroupProfile profile);
}
