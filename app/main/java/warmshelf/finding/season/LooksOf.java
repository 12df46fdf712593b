package warmshelf.finding.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;

/**
 * What one person saw to in a season.
 *
 * @param looks entries that tell of a look
 * @param steps entries that tell of something done
 * @param days on which there was any of either
 */
public record LooksOf(String name, int looks, int steps, int days) {
    /** Of everybody who entered something, by name. */
    static List<LooksOf> of(List<SeasonSowing> sowings) {
        Map<UUID, List<Entry>> entries = new LinkedHashMap<>();
        for (SeasonSowing sowing : sowings) {
            sowing.entries()
                    .forEach(entry -> entries.computeIfAbsent(entry.by(), by -> new ArrayList<>())
                            .add(entry));
        }
        return entries.values().stream()
                .map(LooksOf::ofOne)
                .sorted(Comparator.comparing(LooksOf::name))
                .toList();
    }

    private static LooksOf ofOne(List<Entry> entries) {
        Set<LocalDate> days = new HashSet<>();
        int looks = 0;
        for (Entry entry : entries) {
            days.add(entry.seenOn());
            looks += entry.step() == EntryStep.LOOK ? 1 : 0;
        }
        return new LooksOf(entries.get(0).byName(), looks, entries.size() - looks, days.size());
    }
}
