package warmshelf.privacy;

import static warmshelf.db.generated.Tables.LETTER;
import static warmshelf.db.generated.Tables.MAIL_WISH;
import static warmshelf.db.generated.Tables.MEMBER;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.impl.DSL;
import org.jooq.impl.SQLDataType;
import warmshelf.db.PersonalTraces;
import warmshelf.db.generated.DefaultSchema;
import warmshelf.group.Member;

/**
 * Finds where a person is named in any text of any table, such as a letter to somebody else, and puts another word there. The
 * tables are those of the schema, so one that comes later is looked through too.
 */
final class MentionStore {
    private MentionStore() {}

    /** What tells a person in a text: the whole name, and the addresses that letters went to. */
    static Set<String> of(DSLContext sql, Member member) {
        Set<String> mentions = new LinkedHashSet<>();
        mentions.add(member.name().strip());
        mentions.addAll(sql.select(MAIL_WISH.ADDRESS)
                .from(MAIL_WISH)
                .where(MAIL_WISH.MEMBER_ID.eq(member.id()))
                .fetch(MAIL_WISH.ADDRESS));
        mentions.addAll(sql.selectDistinct(LETTER.ADDRESS)
                .from(LETTER)
                .where(LETTER.MEMBER_ID.eq(member.id()))
                .fetch(LETTER.ADDRESS));
        mentions.remove("");
        return mentions;
    }

    /** Puts a word in the place of each mention, in any capitals, as long as it stands as words of its own. */
    static void replace(DSLContext sql, Set<String> mentions, String word) {
        for (Table<?> table : DefaultSchema.DEFAULT_SCHEMA.getTables()) {
            for (Field<?> field : table.fields()) {
                if (field.getType() == String.class && !isName(field)) {
                    mentions.stream()
                            .filter(mention -> isPlain(mention) || PersonalTraces.isSentence(field))
                            .forEach(mention -> replace(sql, table, field.coerce(String.class), mention, word));
                }
            }
        }
    }

    /** Another member may have the same words in a longer name. */
    private static boolean isName(Field<?> field) {
        return field.equals(MEMBER.NAME) || field.equals(MEMBER.NAME_KEY);
    }

    /** Whether it can be nothing but a person: a name of several words, or an address. A single one may be a crop, too. */
    private static boolean isPlain(String mention) {
        return mention.contains(" ") || mention.contains("@");
    }

    private static void replace(DSLContext sql, Table<?> table, Field<String> field, String mention, String word) {
        Pattern pattern = standingAlone(mention);
        List<String> texts = sql.selectDistinct(field)
                .from(table)
                .where(DSL.lower(field.cast(SQLDataType.CLOB)).contains(mention.toLowerCase(Locale.ROOT)))
                .fetch(field);
        for (String text : texts) {
            String without = fitting(pattern.matcher(text).replaceAll(Matcher.quoteReplacement(word)), field);
            if (!without.equals(text)) {
                sql.update(table).set(field, without).where(field.eq(text)).execute();
            }
        }
    }

    /** The word may be longer than the name was. */
    private static String fitting(String text, Field<?> field) {
        int most = field.getDataType().length();
        return most > 0 && text.length() > most ? text.substring(0, most) : text;
    }

    private static Pattern standingAlone(String mention) {
        return Pattern.compile(
                "(?<![\\p{L}\\p{N}])" + Pattern.quote(mention) + "(?![\\p{L}\\p{N}])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }
}
