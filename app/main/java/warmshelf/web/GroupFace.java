package warmshelf.web;

import java.time.ZoneId;

/** What even a stranger's page shows of the group: its name, and the zone its days are counted in. */
public record GroupFace(String name, ZoneId zone) {}
