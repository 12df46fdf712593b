package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import warmshelf.words.FormReader;
import warmshelf.words.Numbers;
import warmshelf.words.Units;

/** The part of a crop's form that says how its seed answers to warmth; temperatures are typed in the person's units. */
final class WarmthForm {
    static final String REFERENCE = "reference";
    static final String LIKE = "like";
    static final String STATED = "stated";
    private static final double MOST_DAYS = 200;
    private static final double COLDEST_C = 0;
    private static final double WARMEST_C = 45;

    private WarmthForm() {}

    /** The crops of the reference whose seed comes up: what is raised from slips tells nothing of seed. */
    static List<Crop> relatives() {
        CropCatalogue reference = CropCatalogue.bundled();
        return reference.all().stream()
                .filter(crop -> {
                    TemperatureResponse response = reference.responseOf(crop);
                    return response.at(response.bestC()).isPresent();
                })
                .toList();
    }

    /** @param inReference whether the reference has figures of the crop itself */
    static OwnEmergence read(FormReader reader, boolean inReference, Units units) {
        List<String> accepted = inReference ? List.of(REFERENCE, LIKE, STATED) : List.of(LIKE, STATED);
        return switch (reader.choice("emergence", SAY.answerToWarmthField(), accepted)) {
            case LIKE -> like(reader);
            case STATED -> stated(reader, units);
            default -> new OwnEmergence.AsReference();
        };
    }

    private static OwnEmergence like(FormReader reader) {
        String id = reader.text("emergenceLike");
        if (relatives().stream().noneMatch(crop -> crop.id().equals(id))) {
            reader.refuse("emergenceLike", SAY.likeUnknown(id));
        }
        return new OwnEmergence.Like(id);
    }

    private static OwnEmergence stated(FormReader reader, Units units) {
        double min = reader.decimal("emergenceDaysMin", SAY.firstUpField(), 0.5, MOST_DAYS);
        double max = reader.decimal("emergenceDaysMax", SAY.lastUpField(), 0.5, MOST_DAYS);

        double low = reader.decimal("emergenceLow", SAY.coolestField(units.degree()), least(units), most(units));
        double high = reader.decimal("emergenceHigh", SAY.warmestField(units.degree()), least(units), most(units));
        if (reader.ok() && max < min) {
            reader.refuse(
                    "emergenceDaysMax",
                    SAY.lastUpUnfit(reader.text("emergenceDaysMax"), reader.text("emergenceDaysMin")));
        }
        if (reader.ok() && high < low) {
            reader.refuse("emergenceHigh", SAY.warmestUnfit(reader.text("emergenceHigh"), reader.text("emergenceLow")));
        }
        return reader.ok()
                ? new OwnEmergence.Stated(min, max, new CelsiusRange(units.celsiusOf(low), units.celsiusOf(high)))
                : new OwnEmergence.AsReference();
    }

    private static double least(Units units) {
        return units.typedTemperature(COLDEST_C);
    }

    private static double most(Units units) {
        return units.typedTemperature(WARMEST_C);
    }

    /** What was chosen, as it would be typed. */
    static Map<String, List<String>> typed(OwnEmergence emergence, Units units) {
        Map<String, List<String>> typed = new TreeMap<>();
        if (emergence instanceof OwnEmergence.Like like) {
            typed.put("emergence", List.of(LIKE));
            typed.put("emergenceLike", List.of(like.cropId()));
        } else if (emergence instanceof OwnEmergence.Stated stated) {
            typed.put("emergence", List.of(STATED));
            typed.put("emergenceDaysMin", List.of(Numbers.plain(stated.daysMin())));
            typed.put("emergenceDaysMax", List.of(Numbers.plain(stated.daysMax())));
            typed.put(
                    "emergenceLow",
                    List.of(Numbers.plain(units.typedTemperature(stated.at().low()))));
            typed.put(
                    "emergenceHigh",
                    List.of(Numbers.plain(units.typedTemperature(stated.at().high()))));
        } else {
            typed.put("emergence", List.of(REFERENCE));
        }
        return typed;
    }
}
