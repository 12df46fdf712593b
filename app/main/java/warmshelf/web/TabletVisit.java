package warmshelf.web;

import java.util.UUID;

/**
 * A tablet at a rack that stands where a member would: it sees the round of one site, and ticks there.
 *
 * @param site by its name, as it is now
 */
public record TabletVisit(String name, UUID siteId, String site) {}
