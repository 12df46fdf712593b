package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import java.time.ZoneId;
import java.util.List;
import warmshelf.words.Choice;
import warmshelf.words.LengthUnit;
import warmshelf.words.TemperatureUnit;

/** What can be chosen in the group's form. */
final class GroupChoices {
    static final List<String> ZONES = ZoneId.getAvailableZoneIds().stream()
            .filter(zone ->
                    zone.matches("(Africa|America|Antarctica|Asia|Atlantic|Australia|Europe|Indian|Pacific)/.*"))
            .sorted()
            .toList();
    static final Choice CELSIUS = degrees(TemperatureUnit.CELSIUS);
    static final Choice FAHRENHEIT = degrees(TemperatureUnit.FAHRENHEIT);
    static final Choice CENTIMETRES = new Choice(LengthUnit.CENTIMETRES.word(), SAY.centimetres());
    static final Choice INCHES = new Choice(LengthUnit.INCHES.word(), SAY.inches());
    static final List<Choice> TEMPERATURES = List.of(FAHRENHEIT, CELSIUS);
    static final List<Choice> LENGTHS = List.of(INCHES, CENTIMETRES);

    private GroupChoices() {}

    private static Choice degrees(TemperatureUnit unit) {
        return new Choice(unit.letter(), SAY.degrees(unit.scale()));
    }
}
