package warmshelf.sowing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A problem that somebody noted at a sowing and that is not dealt with yet.
 *
 * @param entry the last that told of it
 * @param problem what is wrong
 * @param seen who knows of it; null: nobody has answered
 */
public record NotedProblem(
        Sowing sowing,
        Entry entry,
        Problem problem,
        @Nullable ProblemAnswer seen) {
    /**
     * The open problems of a sowing, the one noted last first. Of the same problem only the last note counts: who has dealt with
     * that one has dealt with those before it. A correction that still tells of the problem keeps its answers.
     *
     * @param answers by the entry they answer
     */
    public static List<NotedProblem> open(Sowing sowing, List<Entry> entries, Map<UUID, List<ProblemAnswer>> answers) {
        if (sowing.stage().isOver()) {
            return List.of();
        }
        Map<Problem, Entry> last = new EnumMap<>(Problem.class);
        for (Entry entry : Entry.standing(entries)) {
            if (entry.problem() != null) {
                last.put(entry.problem(), entry);
            }
        }
        List<NotedProblem> open = new ArrayList<>();
        last.forEach((problem, entry) -> {
            List<ProblemAnswer> given = answersTo(entry, entries, answers);
            if (given.stream().noneMatch(answer -> answer.word() == ProblemAnswer.Word.DONE)) {
                open.add(new NotedProblem(sowing, entry, problem, given.isEmpty() ? null : given.get(0)));
            }
        });
        open.sort(Comparator.comparing(NotedProblem::entry, Entry.BY_SEEN).reversed());
        return open;
    }

    /** Those of several sowings that wait for an answer, the one noted last first. */
    public static List<NotedProblem> unanswered(Collection<List<NotedProblem>> open) {
        return open.stream()
                .flatMap(List::stream)
                .filter(NotedProblem::isUnanswered)
                .sorted(Comparator.comparing(NotedProblem::entry, Entry.BY_SEEN).reversed())
                .toList();
    }

    private static List<ProblemAnswer> answersTo(
            Entry entry, List<Entry> entries, Map<UUID, List<ProblemAnswer>> answers) {
        List<ProblemAnswer> given = new ArrayList<>(answers.getOrDefault(entry.id(), List.of()));
        entries.stream()
                .filter(older -> older.id().equals(entry.supersedes()) && older.problem() == entry.problem())
                .forEach(older -> given.addAll(answersTo(older, entries, answers)));
        return given;
    }

    /** Whether it still waits for an answer. What growers note themselves they know of. */
    public boolean isUnanswered() {
        return seen == null && !entry.by().equals(sowing.grower().memberId());
    }

    /** Its grower and coordinators answer. */
    public boolean mayBeAnsweredBy(UUID member, boolean coordinator) {
        return coordinator || member.equals(sowing.grower().memberId());
    }
}
