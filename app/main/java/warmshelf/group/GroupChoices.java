package warmshelf.group;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import warmshelf.words.Choice;
import warmshelf.words.Countries;

/** What can be chosen in the group's form. */
final class GroupChoices {
    private static final List<String> ZONES = ZoneId.getAvailableZoneIds().stream()
            .filter(zone ->
                    zone.matches("(Africa|America|Antarctica|Asia|Atlantic|Australia|Europe|Indian|Pacific)/.*"))
            .sorted()
            .toList();

    private GroupChoices() {}

    static Map<String, Object> all() {
        return Map.of(
                "zones", ZONES,
                "countries", Countries.byName(),
                "temperatures", List.of(new Choice("F", "Degrees Fahrenheit"), new Choice("C", "Degrees Celsius")),
                "lengths", List.of(new Choice("in", "Inches"), new Choice("cm", "Centimetres")));
    }
}
