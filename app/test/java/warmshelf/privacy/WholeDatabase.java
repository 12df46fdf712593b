package warmshelf.privacy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import warmshelf.db.Database;
import warmshelf.db.generated.DefaultSchema;

/** Every value of every table, in search of words. */
final class WholeDatabase {
    private WholeDatabase() {}

    /** The columns in which one of some words stands, as words of their own and in any capitals. */
    static Set<String> columnsWith(Database database, List<String> words) {
        DSLContext sql = database.sql();
        Set<String> found = new TreeSet<>();
        for (Table<?> table : DefaultSchema.DEFAULT_SCHEMA.getTables()) {
            for (Record row : sql.selectFrom(table).fetch()) {
                for (Field<?> field : row.fields()) {
                    String text = text(row.get(field));
                    words.stream()
                            .filter(word -> standsIn(text, word))
                            .forEach(word -> found.add(table.getName() + "." + field.getName() + ": " + word));
                }
            }
        }
        return found;
    }

    private static boolean standsIn(String text, String word) {
        return Pattern.compile(
                        "(?<![\\p{L}\\p{N}])" + Pattern.quote(word) + "(?![\\p{L}\\p{N}])",
                        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)
                .matcher(text)
                .find();
    }

    private static String text(Object value) {
        return value instanceof byte[] bytes ? new String(bytes, StandardCharsets.ISO_8859_1) : String.valueOf(value);
    }
}
