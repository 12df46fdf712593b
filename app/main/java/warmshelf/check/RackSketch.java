package warmshelf.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Slot;

/**
 * A rack drawn small: its shelves as lines, its places as boxes that stand on them, so that one of them can be marked.
 *
 * @param id by which the drawing is used again for each place on the rack
 * @param name of the rack
 * @param height in the units of the drawing, which is {@link #WIDTH} wide
 */
public record RackSketch(String id, String name, int height, List<Box> shelves, Map<UUID, Box> places) {
    public static final int WIDTH = 128;
    private static final int FRAME = 4;
    private static final int SHELF = 30;
    private static final int LINE = 3;
    private static final int TALL = 17;
    private static final int GAP = 4;
    private static final int WIDEST = 30;

    public RackSketch {
        shelves = List.copyOf(shelves);
        places = Map.copyOf(places);
    }

    /** The places as the drawing shows them. */
    public Collection<Box> boxes() {
        return places.values();
    }

    /** A rectangle, in the units of the drawing. */
    public record Box(int x, int y, int width, int height) {
        /** The part of it that some quarters take. */
        Box part(@Nullable Slot slot) {
            if (slot == null) {
                return this;
            }
            int from = x + width * (slot.firstQuarter() - 1) / Slot.OF_A_PLACE;
            return new Box(from, y, Math.max(LINE, width * slot.quarters() / Slot.OF_A_PLACE), height);
        }
    }

    /**
     * Where something lies.
     *
     * @param box the part of the rack that it takes
     */
    public record Mark(RackSketch rack, Box box) {}

    /** Where something lies on the rack of its place. */
    Mark mark(UUID place, @Nullable Slot slot) {
        return new Mark(this, Objects.requireNonNull(places.get(place)).part(slot));
    }

    /** The racks of some places, by place. */
    static Map<UUID, RackSketch> byPlace(Collection<PlaceAddress> places) {
        Map<String, List<PlaceAddress>> racks = new LinkedHashMap<>();
        places.forEach(each -> racks.computeIfAbsent(each.site() + "/" + each.rack(), unknown -> new ArrayList<>())
                .add(each));
        Map<UUID, RackSketch> byPlace = new LinkedHashMap<>();
        for (List<PlaceAddress> rack : racks.values()) {
            RackSketch sketch = of("rack-" + (1 + byPlace.size()), rack);
            rack.forEach(each -> byPlace.put(each.placeId(), sketch));
        }
        return byPlace;
    }

    private static RackSketch of(String id, List<PlaceAddress> rack) {
        int shelves = rack.stream().mapToInt(PlaceAddress::shelf).max().orElse(1);
        List<Box> lines = new ArrayList<>();
        Map<UUID, Box> boxes = new LinkedHashMap<>();
        for (int shelf = 1; shelf <= shelves; shelf++) {
            int level = shelf;
            lines.add(new Box(0, level * SHELF - LINE, WIDTH, LINE));
            List<PlaceAddress> on = rack.stream()
                    .filter(each -> each.shelf() == level)
                    .sorted(Comparator.comparingInt(PlaceAddress::walkOrder))
                    .toList();
            for (int at = 0; at < on.size(); at++) {
                int step = Math.min(WIDEST + GAP, (WIDTH - 2 * FRAME) / on.size());
                boxes.put(
                        on.get(at).placeId(),
                        new Box(FRAME + GAP / 2 + at * step, level * SHELF - LINE - TALL, step - GAP, TALL));
            }
        }
        return new RackSketch(id, rack.get(0).rack(), shelves * SHELF + LINE, lines, boxes);
    }
}
