package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import warmshelf.web.BrowserSession;
import warmshelf.web.Decisions;
import warmshelf.web.Notice;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;
import warmshelf.words.Needle;
import warmshelf.words.PartOfList;

/** Who belongs to the group; coordinators invite, appoint and note who has left. */
public final class PeoplePages implements Pages {
    private static final int LAST_PAGE = 100_000;

    private final MemberStore members;
    private final SiteCoordinatorStore coordinators;
    private final LinkStore links;
    private final BrowserSession browsers;
    private final Supplier<Set<UUID>> undoable;

    /** @param undoable the members whose leaving can still be taken back */
    public PeoplePages(
            MemberStore members,
            SiteCoordinatorStore coordinators,
            LinkStore links,
            BrowserSession browsers,
            Supplier<Set<UUID>> undoable) {
        this.coordinators = coordinators;
        this.undoable = undoable;
        this.members = members;
        this.links = links;
        this.browsers = browsers;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/people", this::people, Role.MEMBER);
        routes.post("/people/links", this::invite, Role.COORDINATOR);
        routes.post("/people/links/{hash}/withdrawal", this::withdraw, Role.COORDINATOR);
        routes.post("/people/{id}/role", this::changeRole, Role.COORDINATOR);
        routes.post("/people/{id}/sign-in-link", this::makeSignInLink, Role.COORDINATOR);
        routes.post("/people/{id}/return", this::comeBack, Role.COORDINATOR);
    }

    private void people(Context ctx) {
        Respond.page(ctx, "group/people.peb", page(ctx, new FormReader(Map.of("role", List.of("member")))));
    }

    private void invite(Context ctx) {
        InviteForm form = InviteForm.of(ctx.formParamMap());
        if (!form.reader().ok()) {
            Respond.again(ctx, "group/people.peb", page(ctx, form.reader()));
            return;
        }
        String token = links.makeInvite(
                form.coordinator(), form.note(), Visitor.of(ctx).memberId());
        showLink(ctx, LinkPurpose.JOIN.address(token), SAY.linkMade(form.note()));
    }

    private void withdraw(Context ctx) {
        if (!links.withdraw(ctx.pathParam("hash"), Visitor.of(ctx).memberId())) {
            throw Refusal.gone(SAY.linkNotOpen());
        }
        Respond.seeOther(ctx, "/people", SAY.linkWithdrawn());
    }

    private void changeRole(Context ctx) {
        Member member = presentMember(ctx);
        String role = new FormReader(ctx.formParamMap()).text("role");
        if (!role.equals("coordinator") && !role.equals("member")) {
            throw Refusal.of(HttpStatus.UNPROCESSABLE_CONTENT, SAY.roleUnknown());
        }
        boolean coordinator = role.equals("coordinator");
        Visitor visitor = Visitor.of(ctx);
        Decisions.doneOr(members.setCoordinator(member.id(), coordinator, visitor.memberId()), visitor.units());
        Respond.seeOther(
                ctx, "/people", coordinator ? SAY.coordinatorNow(member.name()) : SAY.plainMemberNow(member.name()));
    }

    private void makeSignInLink(Context ctx) {
        Member member = presentMember(ctx);
        String token = links.makeSignIn(member, Visitor.of(ctx).memberId(), 1);
        showLink(ctx, LinkPurpose.SIGN_IN.address(token), SAY.signInLinkMade(member.name()));
    }

    private void comeBack(Context ctx) {
        Member member = member(ctx);
        if (member.erased()) {
            throw Refusal.notFound();
        }
        members.comeBack(member.id(), Visitor.of(ctx).memberId());
        Respond.seeOther(ctx, "/people", SAY.belongsAgain(member.name()));
    }

    private void showLink(Context ctx, String address, String notice) {
        Notice.leaveLink(ctx, browsers.wholeAddress(ctx, address));
        Respond.seeOther(ctx, "/people", notice);
    }

    private Member presentMember(Context ctx) {
        Member member = member(ctx);
        if (!member.present()) {
            throw Refusal.conflict(SAY.hasLeft(member.name()));
        }
        return member;
    }

    private Member member(Context ctx) {
        return members.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private PeoplePage page(Context ctx, FormReader form) {
        Visitor visitor = Visitor.of(ctx);
        boolean coordinator = visitor.coordinator();
        FormReader asked = new FormReader(ctx.queryParamMap());
        String name = asked.text("name");
        Needle needle = Needle.of(name);
        int number =
                asked.optionalWholeNumber("page", SAY.pageField(), 1, LAST_PAGE).orElse(1);
        if (!asked.ok()) {
            throw Refusal.of(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    String.join(" ", asked.problems().values()));
        }
        List<Member> found = members.all().stream()
                .filter(member -> needle.isIn(member.nameFor(visitor.memberId(), coordinator)))
                .toList();
        List<Member> gone = found.stream()
                .filter(member -> !member.present() && !member.erased())
                .toList();
        @Nullable String link = coordinator ? Notice.takeLink(ctx) : null;
        return new PeoplePage(
                name,
                coordinators.names(),
                PartOfList.of(found.stream().filter(Member::present).toList(), number),
                PartOfList.of(gone, 1).lines(),
                gone.size(),
                coordinator ? undoable.get() : Set.of(),
                coordinator ? links.open() : List.of(),
                coordinator ? links.madeForAnother() : Map.of(),
                browsers.addressOfThisMachineOnly(ctx).orElse(""),
                form,
                List.of(new Choice("member", SAY.member()), new Choice("coordinator", SAY.coordinator())),
                Objects.requireNonNullElse(link, ""));
    }
}
