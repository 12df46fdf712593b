package warmshelf.privacy;

import static warmshelf.db.generated.Tables.LETTER;
import static warmshelf.db.generated.Tables.MAIL_WISH;
import static warmshelf.db.generated.Tables.MEMBER;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.TableField;
import org.jooq.impl.DSL;
import org.jooq.impl.SQLDataType;
import warmshelf.db.PersonalTraces;
import warmshelf.db.generated.DefaultSchema;
import warmshelf.group.Member;
import warmshelf.group.MemberStore;

/**
 * Finds where a person is named in any text of any table, such as a letter to somebody else, and puts another word there. The
 * tables are those of the schema, so one that comes later is looked through too.
 */
final class MentionStore {
    private static final String ALONE = "(?<![\\p{L}\\p{N}])%s(?![\\p{L}\\p{N}])";
    /** 'May' may be somebody, 'may' is not, and '3 May' is a day. */
    private static final String CALLED = "(?<!\\p{N} )" + ALONE;

    private MentionStore() {}

    /**
     * What tells a person in texts.
     *
     * @param words the name, the names before it, and the addresses that letters went to
     * @param called what others call the person, as the program's own sentences do
     */
    record Mentions(Set<String> words, String called) {}

    static Mentions of(DSLContext sql, Member member) {
        Set<String> words = new LinkedHashSet<>();
        words.add(member.name().strip());
        words.addAll(MemberStore.earlierNames(sql, member));
        words.addAll(sql.select(MAIL_WISH.ADDRESS)
                .from(MAIL_WISH)
                .where(MAIL_WISH.MEMBER_ID.eq(member.id()))
                .fetch(MAIL_WISH.ADDRESS));
        words.addAll(sql.selectDistinct(LETTER.ADDRESS)
                .from(LETTER)
                .where(LETTER.MEMBER_ID.eq(member.id()))
                .fetch(LETTER.ADDRESS));
        words.remove("");
        return new Mentions(words, member.called());
    }

    /** Puts a word in the place of each mention that stands as words of its own; of a name in any capitals. */
    static void replace(DSLContext sql, Mentions mentions, String word) {
        fields().forEach(field -> {
            boolean sentence = PersonalTraces.isSentence(field);
            mentions.words().stream()
                    .filter(mention -> sentence || isPlain(mention))
                    .forEach(mention -> replace(sql, field, mention, inAnyCapitals(mention), word));
            if (sentence) {
                Pattern called = Pattern.compile(CALLED.formatted(Pattern.quote(mentions.called())));
                replace(sql, field, mentions.called(), called, word);
            }
        });
    }

    /** All texts but the names of members, as another may have the same words in a longer name. */
    private static Stream<Field<?>> fields() {
        return DefaultSchema.DEFAULT_SCHEMA.getTables().stream()
                .flatMap(Table::fieldStream)
                .filter(field -> field.getType() == String.class
                        && !List.of(MEMBER.NAME, MEMBER.NAME_KEY, MEMBER.CALLED).contains(field));
    }

    /** Whether it can be nothing but a person: a name of several words, or an address. A single one may be a crop, too. */
    private static boolean isPlain(String mention) {
        return mention.contains(" ") || mention.contains("@");
    }

    private static void replace(DSLContext sql, Field<?> field, String mention, Pattern pattern, String word) {
        Table<?> table = Objects.requireNonNull(((TableField<?, ?>) field).getTable());
        Field<String> text = field.coerce(String.class);
        List<String> texts = sql.selectDistinct(text)
                .from(table)
                .where(DSL.lower(text.cast(SQLDataType.CLOB)).contains(mention.toLowerCase(Locale.ROOT)))
                .fetch(text);
        for (String before : texts) {
            String without = fitting(pattern.matcher(before).replaceAll(Matcher.quoteReplacement(word)), field);
            if (!without.equals(before)) {
                sql.update(table).set(text, without).where(text.eq(before)).execute();
            }
        }
    }

    /** The word may be longer than the name was. */
    private static String fitting(String text, Field<?> field) {
        int most = field.getDataType().length();
        return most > 0 && text.length() > most ? text.substring(0, most) : text;
    }

    private static Pattern inAnyCapitals(String mention) {
        return Pattern.compile(
                ALONE.formatted(Pattern.quote(mention)), Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }
}
