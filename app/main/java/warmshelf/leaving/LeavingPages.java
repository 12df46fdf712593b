package warmshelf.leaving;

import static warmshelf.leaving.LeavingSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import warmshelf.group.Member;
import warmshelf.group.MemberStore;
import warmshelf.web.Decisions;
import warmshelf.web.Notice;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** Somebody leaves: what they leave, what becomes of it, and taking that back for a day. */
final class LeavingPages implements Pages {
    private final MemberStore members;
    private final LeavingStore leavings;
    private final LeavingUndoStore undos;

    LeavingPages(MemberStore members, LeavingStore leavings, LeavingUndoStore undos) {
        this.members = members;
        this.leavings = leavings;
        this.undos = undos;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/people/{id}/leaving", this::ask, Role.COORDINATOR);
        routes.post("/people/{id}/leaving", this::leave, Role.COORDINATOR);
        routes.post("/people/{id}/leaving/undo", this::undo, Role.COORDINATOR);
    }

    /** What is left of one kind, with what can become of it. */
    public record Group(LeftKind kind, List<LeftThing> things, List<Choice> fates) {}

    private void ask(Context ctx) {
        Member member = present(ctx);
        List<LeftThing> things = leavings.things(member.id(), Visitor.of(ctx).today());
        Respond.page(
                ctx,
                "leaving/show.peb",
                page(member, things, proposed(Visitor.of(ctx).memberId(), member, things)));
    }

    private void leave(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Member member = present(ctx);
        List<LeftThing> things = leavings.things(member.id(), visitor.today());
        LeavingForm form = new LeavingForm(ctx.formParamMap());
        Optional<LeavingForm.Decided> decided = form.decided(things, others(member));
        if (decided.isEmpty()) {
            Respond.again(ctx, "leaving/show.peb", page(member, things, form.reader()));
            return;
        }
        Decisions.doneOr(leavings.leave(member, decided.get(), visitor.today(), visitor.memberId()), visitor.units());
        Notice.leaveUndo(ctx, "/people/" + member.id() + "/leaving/undo");
        Respond.seeOther(ctx, "/people", SAY.leftNow(member.name()));
    }

    private void undo(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Member member = members.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        LeavingUndoStore.Undone undone =
                Decisions.doneOr(undos.undo(member, visitor.today(), visitor.memberId()), visitor.units());
        Respond.seeOther(ctx, "/people", words(member.name(), undone));
    }

    private static String words(String member, LeavingUndoStore.Undone undone) {
        String back = SAY.isBack(member, undone.returned());
        return undone.others() == 0 ? back : back + " " + SAY.othersChanged(undone.others());
    }

    private FormReader proposed(UUID self, Member member, List<LeftThing> things) {
        return LeavingForm.proposed(things, self.equals(member.id()) ? null : self)
                .reader();
    }

    /** @param receivers to whom things can go */
    private record LeavingPage(Member member, FormReader form, List<Group> groups, List<Choice> receivers) {}

    private LeavingPage page(Member member, List<LeftThing> things, FormReader form) {
        return new LeavingPage(
                member,
                form,
                groups(things),
                others(member).stream()
                        .map(each -> new Choice(each.id().toString(), each.name()))
                        .toList());
    }

    private static List<Group> groups(List<LeftThing> things) {
        return List.of(LeftKind.values()).stream()
                .map(kind -> new Group(
                        kind,
                        things.stream().filter(thing -> thing.kind() == kind).toList(),
                        kind.fates().stream()
                                .map(fate -> new Choice(fate.word(), fate.title()))
                                .toList()))
                .filter(group -> !group.things().isEmpty())
                .toList();
    }

    private List<Member> others(Member member) {
        return members.all().stream()
                .filter(Member::present)
                .filter(other -> !other.id().equals(member.id()))
                .toList();
    }

    private Member present(Context ctx) {
        Member member = members.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        if (!member.present()) {
            throw Refusal.conflict(SAY.hasLeft(member.name()));
        }
        return member;
    }
}
