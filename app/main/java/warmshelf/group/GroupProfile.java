package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import warmshelf.words.Units;

/**
 * What is set for the whole group.
 *
 * @param zone the zone its days are counted in
 * @param units how figures are shown to members who chose no units of their own
 * @param country two letters of ISO 3166
 * @param season year of planting out that the group works towards
 */
public record GroupProfile(String name, ZoneId zone, Units units, String country, String homePostcode, int season) {

    /** A sentence for each thing in which this differs from another profile, telling what it is here. */
    List<String> differences(GroupProfile other) {
        List<String> sentences = new ArrayList<>();
        compare(sentences, SAY.groupNameField(), name, other.name);
        compare(sentences, SAY.zoneField(), zone.getId(), other.zone.getId());
        compare(
                sentences,
                SAY.temperaturesField(),
                units.temperature().letter(),
                other.units.temperature().letter());
        compare(
                sentences,
                SAY.lengthsField(),
                units.length().word(),
                other.units.length().word());
        compare(sentences, SAY.countryField(), country, other.country);
        compare(sentences, SAY.groupPostcodeField(), homePostcode, other.homePostcode);
        return sentences;
    }

    private static void compare(List<String> sentences, String label, String here, String there) {
        if (!here.equals(there)) {
            sentences.add(SAY.isNow(label, here, there));
        }
    }
}
