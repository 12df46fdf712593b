package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import warmshelf.sowing.History;
import warmshelf.sowing.HistoryStore;
import warmshelf.sowing.NotedProblem;
import warmshelf.sowing.ProblemAnswer;
import warmshelf.sowing.ProblemStore;
import warmshelf.sowing.Sowing;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Answering a problem that somebody noted, and putting such an answer away. */
public final class ProblemPages implements Pages {
    private final HistoryStore histories;
    private final ProblemStore problems;

    ProblemPages(HistoryStore histories, ProblemStore problems) {
        this.histories = histories;
        this.problems = problems;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.post("/sowings/{id}/problems/{entry}/answers", this::answer, Role.MEMBER);
        routes.post("/problems/{entry}/dismissal", this::dismiss, Role.MEMBER);
    }

    private void answer(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        History history = histories.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        UUID entry = Respond.id(ctx, "entry");
        FormReader form = new FormReader(ctx.formParamMap());
        ProblemAnswer.Word word = word(form);
        NotedProblem problem = problems
                .open(List.of(history))
                .getOrDefault(history.sowing().id(), List.of())
                .stream()
                .filter(open -> open.entry().id().equals(entry))
                .findFirst()
                .orElse(null);
        if (problem == null) {
            if (history.entries().stream().noneMatch(each -> each.id().equals(entry))) {
                throw Refusal.notFound();
            }
            Respond.seeOther(ctx, then(form, history.sowing()), SAY.problemGone());
            return;
        }
        if (!problem.mayBeAnsweredBy(visitor.memberId(), visitor.coordinator())) {
            throw Refusal.forbidden(
                    SAY.onlyGrowerAnswers(history.sowing().grower().name()));
        }
        boolean added = problems.answer(problem, word, visitor.memberId());
        Respond.seeOther(ctx, then(form, history.sowing()), notice(visitor, problem, word, added));
    }

    private static ProblemAnswer.Word word(FormReader form) {
        List<String> words = Arrays.stream(ProblemAnswer.Word.values())
                .map(ProblemAnswer.Word::word)
                .toList();
        String word = form.choice("answer", SAY.answerField(), words);
        if (!form.ok()) {
            throw Refusal.of(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    String.join(" ", form.problems().values()));
        }
        return ProblemAnswer.Word.named(word);
    }

    private static String notice(Visitor visitor, NotedProblem problem, ProblemAnswer.Word word, boolean added) {
        if (!added) {
            return SAY.answeredBefore();
        }
        boolean own = problem.entry().by().equals(visitor.memberId());
        String answer = SAY.answered(problem.sowing().title(), problem.problem().words(), word.words());
        return own ? answer : answer + " " + SAY.toldSo(problem.entry().byName());
    }

    private static String then(FormReader form, Sowing sowing) {
        return GoOn.to(form.text("then"), "/sowings/" + sowing.id());
    }

    private void dismiss(Context ctx) {
        problems.dismiss(Respond.id(ctx, "entry"), Visitor.of(ctx).memberId());
        Respond.seeOther(ctx, GoOn.to(new FormReader(ctx.formParamMap()).text("then"), "/today"), SAY.putAway());
    }
}
