package warmshelf.shelf;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * From which days on what was used is used no more. What stands on something retired is retired with it.
 *
 * @param parts by sites, racks, shelves and mats, each as was said of it
 * @param mats by mats, as it follows from all they stand on
 * @param places the same by places of either kind
 */
public record Retirements(Map<UUID, LocalDate> parts, Map<UUID, LocalDate> mats, Map<UUID, LocalDate> places) {
    public static final Retirements NONE = new Retirements(Map.of(), Map.of(), Map.of());

    public Retirements {
        parts = Map.copyOf(parts);
        mats = Map.copyOf(mats);
        places = Map.copyOf(places);
    }

    /** The day from which nothing lies on a place, where that is before something would leave it. */
    public Optional<LocalDate> inTheWay(UUID place, LocalDate to) {
        return Optional.ofNullable(places.get(place)).filter(day -> day.isBefore(to));
    }

    /** Whether a mat takes something new on a day. */
    public boolean isInUse(UUID mat, LocalDate day) {
        return !isOver(mats.get(mat), day);
    }

    /** What is in use on a day, of some sites with all that stands there. */
    List<Site> inUse(List<Site> sites, LocalDate day) {
        if (parts.isEmpty()) {
            return sites;
        }
        return sites.stream()
                .filter(site -> stands(site.id(), day))
                .map(site -> site.with(site.racks().stream()
                        .filter(rack -> stands(rack.id(), day))
                        .map(rack -> rack.with(rack.shelves().stream()
                                .filter(shelf -> stands(shelf.id(), day))
                                .map(shelf -> shelf.with(shelf.mats().stream()
                                        .filter(mat -> stands(mat.id(), day))
                                        .toList()))
                                .toList()))
                        .toList()))
                .toList();
    }

    private boolean stands(UUID part, LocalDate day) {
        return !isOver(parts.get(part), day);
    }

    private static boolean isOver(@Nullable LocalDate from, LocalDate day) {
        return from != null && !from.isAfter(day);
    }
}
