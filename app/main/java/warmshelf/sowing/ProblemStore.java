package warmshelf.sowing;

import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PROBLEM_ANSWER;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.exception.IntegrityConstraintViolationException;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** Keeps what was answered to problems, and tells whoever noted them. */
public final class ProblemStore {
    private final DSLContext sql;
    private final Audit audit;

    public ProblemStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** The problems that are not dealt with, by the sowing at which they were noted; without those that have none. */
    public Map<UUID, List<NotedProblem>> open(Collection<History> histories) {
        List<UUID> noted = histories.stream()
                .flatMap(history -> history.entries().stream())
                .filter(entry -> entry.problem() != null)
                .map(Entry::id)
                .toList();
        Map<UUID, List<ProblemAnswer>> answers = answersTo(noted);
        Map<UUID, List<NotedProblem>> open = new HashMap<>();
        for (History history : histories) {
            List<NotedProblem> here = NotedProblem.open(history.sowing(), history.entries(), answers);
            if (!here.isEmpty()) {
                open.put(history.sowing().id(), here);
            }
        }
        return open;
    }

    /** What was answered to some entries, the first answer first. */
    public Map<UUID, List<ProblemAnswer>> answersTo(Collection<UUID> entries) {
        if (entries.isEmpty()) {
            return Map.of();
        }
        return sql
                .select(PROBLEM_ANSWER.asterisk(), MEMBER.CALLED)
                .from(Database.listed(PROBLEM_ANSWER, PROBLEM_ANSWER.ENTRY_ID, entries))
                .join(MEMBER)
                .on(MEMBER.ID.eq(PROBLEM_ANSWER.MADE_BY))
                .orderBy(PROBLEM_ANSWER.MADE_AT, PROBLEM_ANSWER.ANSWER.desc())
                .fetch(ProblemStore::answer)
                .stream()
                .collect(Collectors.groupingBy(ProblemAnswer::entry));
    }

    private static ProblemAnswer answer(Record row) {
        return new ProblemAnswer(
                row.get(PROBLEM_ANSWER.ENTRY_ID),
                ProblemAnswer.Word.named(row.get(PROBLEM_ANSWER.ANSWER)),
                row.get(PROBLEM_ANSWER.MADE_BY),
                row.get(MEMBER.CALLED),
                row.get(PROBLEM_ANSWER.MADE_AT));
    }

    /**
     * Keeps an answer.
     *
     * @return false when the same was answered before; that one stands, whoever gave it
     */
    public boolean answer(NotedProblem problem, ProblemAnswer.Word word, UUID by) {
        UUID entry = problem.entry().id();
        try {
            return sql.transactionResult(inside -> {
                DSLContext tx = inside.dsl();
                Condition same = PROBLEM_ANSWER.ENTRY_ID.eq(entry).and(PROBLEM_ANSWER.ANSWER.eq(word.word()));
                if (tx.fetchExists(PROBLEM_ANSWER, same)) {
                    return false;
                }
                tx.insertInto(PROBLEM_ANSWER)
                        .set(PROBLEM_ANSWER.ENTRY_ID, entry)
                        .set(PROBLEM_ANSWER.ANSWER, word.word())
                        .set(PROBLEM_ANSWER.MADE_BY, by)
                        .set(PROBLEM_ANSWER.MADE_AT, audit.now())
                        .execute();
                audit.write(
                        tx,
                        by,
                        "answer problem " + word.word(),
                        "entry",
                        entry,
                        problem.problem().word());
                return true;
            });
        } catch (IntegrityConstraintViolationException sameMoment) {
            // somebody else answered the same just then
            return false;
        }
    }

    /**
     * What people are to be told of the problems they noted, by who noted them: of each the last answer, the newest first.
     *
     * @param sowing at which it was noted
     */
    public record Told(UUID noter, UUID sowing, Problem problem, ProblemAnswer answer) {}

    /** What has not been put away; nobody is told of their own answers. */
    public Map<UUID, List<Told>> told() {
        Map<UUID, Told> last = new HashMap<>();
        sql.select(PROBLEM_ANSWER.asterisk(), MEMBER.CALLED, ENTRY.MADE_BY, ENTRY.SOWING_ID, ENTRY.PROBLEM)
                .from(PROBLEM_ANSWER)
                .join(ENTRY)
                .on(ENTRY.ID.eq(PROBLEM_ANSWER.ENTRY_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(PROBLEM_ANSWER.MADE_BY))
                .where(PROBLEM_ANSWER.DISMISSED_AT.isNull(), PROBLEM_ANSWER.MADE_BY.ne(ENTRY.MADE_BY))
                .orderBy(PROBLEM_ANSWER.MADE_AT, PROBLEM_ANSWER.ANSWER.desc())
                .forEach(row -> last.put(
                        row.get(PROBLEM_ANSWER.ENTRY_ID),
                        new Told(
                                row.get(ENTRY.MADE_BY),
                                row.get(ENTRY.SOWING_ID),
                                Problem.named(row.get(ENTRY.PROBLEM)),
                                answer(row))));
        return last.values().stream()
                .sorted((one, other) ->
                        other.answer().at().compareTo(one.answer().at()))
                .collect(Collectors.groupingBy(Told::noter));
    }

    /** Puts the answers to an entry away for whoever made it; somebody else's stay. */
    public void dismiss(UUID entry, UUID member) {
        sql.transaction(inside -> {
            DSLContext tx = inside.dsl();
            boolean mine = tx.fetchExists(ENTRY, ENTRY.ID.eq(entry).and(ENTRY.MADE_BY.eq(member)));
            int gone = !mine
                    ? 0
                    : tx.update(PROBLEM_ANSWER)
                            .set(PROBLEM_ANSWER.DISMISSED_AT, audit.now())
                            .where(PROBLEM_ANSWER.ENTRY_ID.eq(entry), PROBLEM_ANSWER.DISMISSED_AT.isNull())
                            .execute();
            if (gone > 0) {
                audit.write(tx, member, "put answer away", "entry", entry, "");
            }
        });
    }
}
