package warmshelf.group;

import java.time.ZoneId;
import java.util.List;
import warmshelf.words.Choice;

/** What can be chosen in the group's form. */
final class GroupChoices {
    static final List<String> ZONES = ZoneId.getAvailableZoneIds().stream()
            .filter(zone ->
                    zone.matches("(Africa|America|Antarctica|Asia|Atlantic|Australia|Europe|Indian|Pacific)/.*"))
            .sorted()
            .toList();
    static final List<Choice> TEMPERATURES =
            List.of(new Choice("F", "Degrees Fahrenheit"), new Choice("C", "Degrees Celsius"));
    static final List<Choice> LENGTHS = List.of(new Choice("in", "Inches"), new Choice("cm", "Centimetres"));

    private GroupChoices() {}
}
