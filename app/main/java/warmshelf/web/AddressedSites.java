package warmshelf.web;

import java.util.Set;
import java.util.UUID;

/** At which sites the things are that addresses name; asked for routes of coordinators of a site. */
public interface AddressedSites {
    /** Whether it can tell so of an address as routes write it; one that names nothing is known. */
    boolean knows(String address);

    /** The sites that the thing touches; none where it has none yet, or is not there, as its page will say. */
    Set<UUID> of(String address, UUID id);
}
