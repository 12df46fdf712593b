package warmshelf.privacy;

import static warmshelf.privacy.PrivacySentences.SAY;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.db.DescribedTable;
import warmshelf.words.DayWords;

/**
 * What a table holds of a person, as people read it: without keys, which say nothing to anybody, and without columns that are empty
 * everywhere.
 *
 * @param total how many rows there are; at most so many are shown
 */
record KnownWords(String title, String about, int total, List<Column> columns, List<List<String>> rows) {
    static final int SHOWN = 12;

    /**
     * A column of the table.
     *
     * @param about what it means, in the words of the data dictionary
     */
    public record Column(String title, String about) {}

    public boolean shortened() {
        return total > rows.size();
    }

    static KnownWords of(KnownTable table, ZoneId zone) {
        List<Column> columns = new ArrayList<>();
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < table.columns().size(); i++) {
            int place = i;
            if (table.rows().stream()
                    .anyMatch(row -> !word(row.get(place), zone).isEmpty())) {
                DescribedTable.Column column = table.columns().get(i);
                places.add(i);
                columns.add(new Column(KnownTable.asWords(column.name()), column.about()));
            }
        }
        List<List<String>> rows = table.rows().stream()
                .limit(SHOWN)
                .map(row ->
                        places.stream().map(place -> word(row.get(place), zone)).toList())
                .toList();
        return new KnownWords(table.title(), table.about(), table.rows().size(), columns, rows);
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
            return DayWords.dateAndYear(moment.atZoneSameInstant(zone).toLocalDate());
        }
        if (value instanceof LocalDate day) {
            return DayWords.dateAndYear(day);
        }
        if (value instanceof Boolean yes) {
            return yes ? SAY.yes() : SAY.no();
        }
        return value.toString();
    }
}
