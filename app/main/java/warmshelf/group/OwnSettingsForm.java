package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import warmshelf.words.FormReader;
import warmshelf.words.LengthUnit;
import warmshelf.words.TemperatureUnit;

/** What members change about themselves, as typed. */
record OwnSettingsForm(FormReader reader, OwnSettings settings, int version) {
    static final String AS_THE_GROUP = "group";

    static OwnSettingsForm from(Map<String, List<String>> typed) {
        FormReader form = new FormReader(typed);
        String name = PersonForm.readName(form);
        String country = PostcodeRule.readCountry(form, "country");
        String postcode = PostcodeRule.readPostcode(form, "postcode", SAY.ownPostcodeField(), country);
        String temperature =
                form.choice("temperature", SAY.temperaturesField(), orAsTheGroup(TemperatureUnit.letters()));
        String length = form.choice("length", SAY.lengthsField(), orAsTheGroup(LengthUnit.words()));
        int version = form.wholeNumber("version", SAY.versionField(), 1, Integer.MAX_VALUE);
        return new OwnSettingsForm(
                form, new OwnSettings(name, country, postcode, own(temperature), own(length)), version);
    }

    /** The form filled with what is stored. */
    static FormReader of(Member member) {
        return new FormReader(Map.of(
                "name", List.of(member.name()),
                "country", List.of(member.country()),
                "postcode", List.of(member.postcode()),
                "temperature", List.of(shown(member.temperatureUnit())),
                "length", List.of(shown(member.lengthUnit())),
                "version", List.of(String.valueOf(member.version()))));
    }

    private static List<String> orAsTheGroup(List<String> units) {
        return Stream.concat(Stream.of(AS_THE_GROUP), units.stream()).toList();
    }

    private static String shown(@Nullable String unit) {
        return unit == null ? AS_THE_GROUP : unit;
    }

    private static @Nullable String own(String choice) {
        return choice.equals(AS_THE_GROUP) ? null : choice;
    }
}
