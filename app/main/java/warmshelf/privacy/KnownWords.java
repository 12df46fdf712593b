package warmshelf.privacy;

import static warmshelf.privacy.PrivacySentences.SAY;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.Temporal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.db.DescribedTable;
import warmshelf.words.DayWords;

/**
 * What a table holds of a person, as people read it: the columns that tell something, where they do so in any row.
 *
 * @param total how many rows there are; at most so many are shown
 */
record KnownWords(String title, int total, List<String> columns, List<List<String>> rows) {
    static final int SHOWN = 12;

    /**
     * What is known of one matter.
     *
     * @param total how many rows of all its tables
     */
    public record Matter(String title, int total, List<KnownWords> tables) {}

    public boolean shortened() {
        return total > rows.size();
    }

    /** The matters of which anything is known. */
    static List<Matter> byMatter(List<KnownTable> tables, ZoneId zone) {
        Map<String, KnownTable> known = tables.stream().collect(Collectors.toMap(KnownTable::name, table -> table));
        Map<KnownMatter, List<KnownWords>> words = new EnumMap<>(KnownMatter.class);
        for (KnownPart part : KnownPart.all()) {
            KnownTable table = known.get(part.table());
            if (table != null) {
                words.computeIfAbsent(part.matter(), matter -> new ArrayList<>())
                        .add(of(part, table, zone));
            }
        }
        return words.entrySet().stream()
                .map(entry -> new Matter(
                        entry.getKey().title(),
                        entry.getValue().stream().mapToInt(KnownWords::total).sum(),
                        entry.getValue()))
                .toList();
    }

    private static KnownWords of(KnownPart part, KnownTable table, ZoneId zone) {
        List<String> names =
                table.columns().stream().map(DescribedTable.Column::name).toList();
        List<String> columns = new ArrayList<>();
        List<Integer> places = new ArrayList<>();
        part.shown().forEach((name, heading) -> {
            int place = names.indexOf(name);
            boolean says = table.rows().stream()
                    .anyMatch(row -> !word(row.get(place), zone).isEmpty());
            if (says) {
                places.add(place);
                columns.add(heading);
            }
        });
        List<List<String>> rows = newestFirst(table.rows(), places).stream()
                .limit(SHOWN)
                .map(row ->
                        places.stream().map(place -> word(row.get(place), zone)).toList())
                .toList();
        return new KnownWords(part.title(), table.rows().size(), columns, rows);
    }

    /** By the first day or moment that is shown; where none is, as they stand. */
    private static List<List<@Nullable Object>> newestFirst(List<List<@Nullable Object>> rows, List<Integer> places) {
        return places.stream()
                .filter(place -> rows.stream().anyMatch(row -> row.get(place) instanceof Temporal))
                .findFirst()
                .map(place -> rows.stream()
                        .sorted(Comparator.comparing((List<@Nullable Object> row) -> written(row.get(place)))
                                .reversed())
                        .toList())
                .orElse(rows);
    }

    /** Days and moments in UTC, as they sort. */
    private static String written(@Nullable Object value) {
        return value instanceof OffsetDateTime moment
                ? moment.withOffsetSameInstant(ZoneOffset.UTC).toString()
                : String.valueOf(Objects.requireNonNullElse(value, ""));
    }

    static String who(KnownTable.Who who) {
        return who == KnownTable.Who.YOU ? SAY.you() : SAY.somebodyElse();
    }

    private static String word(@Nullable Object value, ZoneId zone) {
        if (value == null || value instanceof UUID) {
            return "";
        }
        if (value instanceof KnownTable.Who who) {
            return who(who);
        }
        if (value instanceof OffsetDateTime moment) {
            return date(moment.atZoneSameInstant(zone).toLocalDate());
        }
        if (value instanceof LocalDate day) {
            return date(day);
        }
        if (value instanceof Boolean yes) {
            return yes ? SAY.yes() : SAY.no();
        }
        return value.toString();
    }

    /** On one line, as narrow as the column may be. */
    private static String date(LocalDate day) {
        return DayWords.dateAndYear(day).replace(' ', '\u00a0');
    }
}
