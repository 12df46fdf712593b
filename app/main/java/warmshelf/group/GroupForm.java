package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import warmshelf.words.FormReader;
import warmshelf.words.LengthUnit;
import warmshelf.words.TemperatureUnit;
import warmshelf.words.Units;

/** The group's profile as typed. Its fields start with 'group', so that a person's own can stand beside them. */
record GroupForm(FormReader reader, GroupProfile profile) {
    static final String COUNTRY = "groupCountry";

    /** A group that is opened: it says which season it works towards. */
    static GroupForm opening(FormReader form) {
        return from(form, form.wholeNumber("groupSeason", SAY.seasonField(), 2000, 2200));
    }

    /** A group that is changed: its season is turned on a page of its own. */
    static GroupForm changing(FormReader form, int season) {
        return from(form, season);
    }

    private static GroupForm from(FormReader form, int season) {
        String name = form.requiredText("groupName", SAY.groupNameField(), 80);
        ZoneId zone = readZone(form);
        Units units = readUnits(form);
        String country = PostcodeRule.readCountry(form, COUNTRY);
        String postcode = PostcodeRule.readPostcode(form, "groupPostcode", SAY.groupPostcodeField(), country);
        return new GroupForm(form, new GroupProfile(name, zone, units, country, postcode, season));
    }

    /** The form filled with a profile. */
    static Map<String, List<String>> typed(GroupProfile profile) {
        return Map.of(
                "groupName",
                List.of(profile.name()),
                "groupZone",
                List.of(profile.zone().getId()),
                "groupTemperature",
                List.of(profile.units().temperature().letter()),
                "groupLength",
                List.of(profile.units().length().word()),
                COUNTRY,
                List.of(profile.country()),
                "groupPostcode",
                List.of(profile.homePostcode()));
    }

    private static Units readUnits(FormReader form) {
        String temperature = form.choice("groupTemperature", SAY.temperaturesField(), TemperatureUnit.letters());
        String length = form.choice("groupLength", SAY.lengthsField(), LengthUnit.words());
        return new Units(
                TemperatureUnit.withLetter(temperature).orElse(TemperatureUnit.CELSIUS),
                LengthUnit.withWord(length).orElse(LengthUnit.CENTIMETRES));
    }

    private static ZoneId readZone(FormReader form) {
        String zone = form.requiredText("groupZone", SAY.zoneField(), 60);
        try {
            return ZoneId.of(zone);
        } catch (DateTimeException unknown) {
            form.refuse("groupZone", SAY.zoneUnknown(zone));
            return ZoneId.of("UTC");
        }
    }
}
