package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.words.FormReader;
import warmshelf.words.MinusSign;
import warmshelf.words.Units;

/** A garden's exact point as it is typed in. */
public final class PointForm {
    static final List<String> FIELDS = List.of("latitude", "longitude", "elevation");

    private final FormReader reader;
    private final Map<String, String> typed;
    private final @Nullable GardenPoint point;

    private PointForm(FormReader reader, @Nullable GardenPoint point) {
        this.reader = reader;
        this.typed = reader.typed();
        this.point = point;
    }

    static PointForm showing(Optional<GardenStore.Versioned> stored, Units units) {
        Map<String, List<String>> fields = new HashMap<>();
        stored.ifPresent(known -> fields.putAll(typed(known.point(), units)));
        fields.put(
                "version",
                List.of(String.valueOf(
                        stored.map(GardenStore.Versioned::version).orElse(0))));
        return new PointForm(new FormReader(fields), null);
    }

    static PointForm of(Map<String, List<String>> typed, Units units) {
        FormReader reader = new FormReader(MinusSign.plain(typed, "latitude", "longitude", "elevation"));
        GardenPoint point = read(reader, units);
        reader.wholeNumber("version", "Version", 0, Integer.MAX_VALUE);
        return new PointForm(reader, reader.ok() ? point : null);
    }

    /** Reads latitude, longitude and elevation; after a problem the point is only a stand-in. */
    public static GardenPoint read(FormReader reader, Units units) {
        reader.requiredText("latitude", SAY.latitude(), 40);
        reader.requiredText("longitude", SAY.longitude(), 40);
        reader.requiredText("elevation", SAY.elevation(), 40);
        double latitude = reader.decimal("latitude", SAY.latitude(), -90, 90);
        double longitude = reader.decimal("longitude", SAY.longitude(), -180, 180);
        return new GardenPoint(latitude, longitude, elevationM(reader, SAY.elevation(), units));
    }

    /** Reads the elevation, in metres above the sea. */
    public static double elevationM(FormReader reader, String label, Units units) {
        double elevation = reader.decimal(
                "elevation",
                SAY.inUnit(label, Height.unit(units)),
                (double) Height.figure(Height.LOWEST_M, units),
                (double) Height.figure(Height.HIGHEST_M, units));
        // whole feet at either end may lie a hand's breadth beyond what is stored
        return Math.max(Height.LOWEST_M, Math.min(Height.HIGHEST_M, Height.metres(elevation, units)));
    }

    /** The fields of a point as a person of these units would type them. */
    static Map<String, List<String>> typed(GardenPoint point, Units units) {
        return Map.of(
                "latitude", List.of(degrees(point.latitude())),
                "longitude", List.of(degrees(point.longitude())),
                "elevation", List.of(String.valueOf(Height.figure(point.elevationM(), units))));
    }

    private static String degrees(double value) {
        return String.format(Locale.ROOT, "%.5f", value).replaceAll("0+$", "").replaceAll("\\.$", "");
    }

    /** Somebody else changed the point first: the form says so, and its next sending counts as having seen that. */
    void overtaken(Optional<GardenStore.Versioned> now, Units units) {
        typed.put(
                "version",
                String.valueOf(now.map(GardenStore.Versioned::version).orElse(0)));
        reader.refuse(
                "latitude",
                SAY.pointChangedMeanwhile(
                        now.map(known -> Height.words(known.point(), units)).orElseGet(SAY::notSet)));
    }

    Optional<GardenPoint> point() {
        return Optional.ofNullable(point);
    }

    int version() {
        return Integer.parseInt(reader.text("version"));
    }

    public Map<String, String> typed() {
        return typed;
    }

    public Map<String, String> problems() {
        return reader.problems();
    }
}
