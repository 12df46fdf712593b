package warmshelf.group;

import java.time.ZoneId;
import warmshelf.web.Units;

/**
 * What is set for the whole group.
 *
 * @param zone the zone its days are counted in
 * @param units how figures are shown to members who chose no units of their own
 * @param country two letters of ISO 3166
 * @param season year of planting out that the group works towards
 */
public record GroupProfile(String name, ZoneId zone, Units units, String country, String homePostcode, int season) {}
