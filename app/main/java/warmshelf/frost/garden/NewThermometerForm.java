package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.words.FormReader;
import warmshelf.words.MinusSign;
import warmshelf.words.Units;

/** A new thermometer as it is typed in. */
public final class NewThermometerForm {
    static final String GROUP = "group";
    private static final String MINE = "mine";
    private static final int LONGEST_NAME = 60;

    private final FormReader reader;
    private final @Nullable NewThermometer thermometer;

    private NewThermometerForm(FormReader reader, @Nullable NewThermometer thermometer) {
        this.reader = reader;
        this.thermometer = thermometer;
    }

    /** Nothing typed yet: one's own, at the garden's point where that is set. */
    static NewThermometerForm blank(Optional<GardenPoint> garden, Units units) {
        Map<String, List<String>> fields = new HashMap<>();
        garden.ifPresent(point -> fields.putAll(PointForm.typed(point, units)));
        fields.put("whose", List.of(MINE));
        return new NewThermometerForm(new FormReader(fields), null);
    }

    /** A point left empty is that of the garden, for one's own thermometer. */
    static NewThermometerForm of(
            Map<String, List<String>> typed, Optional<GardenPoint> garden, UUID memberId, Units units) {
        FormReader reader = new FormReader(MinusSign.plain(typed, "latitude", "longitude", "elevation"));
        String name = reader.requiredText("name", SAY.theName(), LONGEST_NAME);
        String whose = reader.text("whose");
        if (!whose.equals(MINE) && !whose.equals(GROUP)) {
            reader.refuse("whose", SAY.whoseNotChosen());
        }
        boolean noPoint =
                PointForm.FIELDS.stream().allMatch(field -> reader.text(field).isEmpty());
        GardenPoint point =
                noPoint && whose.equals(MINE) && garden.isPresent() ? garden.get() : PointForm.read(reader, units);
        return new NewThermometerForm(
                reader, reader.ok() ? new NewThermometer(name, whose.equals(GROUP) ? null : memberId, point) : null);
    }

    boolean isForTheGroup() {
        return reader.text("whose").equals(GROUP);
    }

    Optional<NewThermometer> thermometer() {
        return Optional.ofNullable(thermometer);
    }

    public Map<String, String> typed() {
        return reader.typed();
    }

    public Map<String, String> problems() {
        return reader.problems();
    }
}
