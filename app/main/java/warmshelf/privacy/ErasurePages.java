package warmshelf.privacy;

import static warmshelf.privacy.PrivacySentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import warmshelf.group.DoorPages;
import warmshelf.group.Member;
import warmshelf.group.MemberStore;
import warmshelf.group.Passphrases;
import warmshelf.web.BrowserSession;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** Somebody is erased: by themself, or by a coordinator once they have left. */
final class ErasurePages implements Pages {
    private static final String TEMPLATE = "privacy/erasure.peb";

    private final MemberStore members;
    private final ErasureStore erasures;
    private final ErasureCountStore counts;
    private final Passphrases passphrases;
    private final DoorPages door;
    private final BrowserSession browsers;
    private final Runnable forgetIncoming;

    /** @param forgetIncoming drops files that wait to be taken in, as they may name the person */
    ErasurePages(
            MemberStore members,
            ErasureStore erasures,
            ErasureCountStore counts,
            Passphrases passphrases,
            DoorPages door,
            BrowserSession browsers,
            Runnable forgetIncoming) {
        this.members = members;
        this.erasures = erasures;
        this.counts = counts;
        this.passphrases = passphrases;
        this.door = door;
        this.browsers = browsers;
        this.forgetIncoming = forgetIncoming;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/settings/erasure", this::askSelf, Role.MEMBER);
        routes.post("/settings/erasure", this::eraseSelf, Role.MEMBER);
        routes.get("/people/{id}/erasure", this::askOfOther, Role.COORDINATOR);
        routes.post("/people/{id}/erasure", this::eraseOther, Role.COORDINATOR);
    }

    private void askSelf(Context ctx) {
        show(ctx, self(ctx));
    }

    private void askOfOther(Context ctx) {
        show(ctx, gone(ctx));
    }

    private void show(Context ctx, Member member) {
        Respond.page(ctx, TEMPLATE, page(ctx, member, new FormReader(Map.of())));
    }

    private void eraseSelf(Context ctx) {
        Member member = self(ctx);
        door.limitChange(member.id());
        Predicate<String> confirms =
                typed -> isName(typed, member) || passphrases.fits(typed, members.passphraseHash(member.id()));
        if (erase(ctx, member, confirms)) {
            browsers.forget(ctx);
            Respond.seeOther(ctx, "/privacy", SAY.youAreErased());
        }
    }

    private void eraseOther(Context ctx) {
        Member member = gone(ctx);
        if (erase(ctx, member, typed -> isName(typed, member))) {
            Respond.seeOther(ctx, "/people", SAY.personErased());
        }
    }

    private static boolean isName(String typed, Member member) {
        return Member.key(typed).equals(Member.key(member.name()));
    }

    /** Whether it was done; else the page stands there once more. */
    private boolean erase(Context ctx, Member member, Predicate<String> confirms) {
        Visitor visitor = Visitor.of(ctx);
        ErasureForm form = new ErasureForm(ctx.formParamMap());
        Optional<ErasureWish> wish = form.wish(member, confirms, successors(member));
        if (wish.isEmpty()) {
            Respond.again(ctx, TEMPLATE, page(ctx, member, form.reader()));
            return false;
        }
        Decisions.doneOr(erasures.erase(member, wish.get(), visitor.today(), visitor.memberId()), visitor.units());
        forgetIncoming.run();
        return true;
    }

    private ErasurePage page(Context ctx, Member member, FormReader form) {
        Visitor visitor = Visitor.of(ctx);
        boolean self = member.id().equals(visitor.memberId());
        return new ErasurePage(
                member,
                self,
                self ? "/settings/erasure" : "/people/" + member.id() + "/erasure",
                self ? "/settings" : "/people",
                counts.of(member.id(), visitor.today()),
                isOnlyCoordinator(member),
                successors(member).stream()
                        .map(each -> new Choice(each.id().toString(), each.name()))
                        .toList(),
                form);
    }

    /** Who has to be chosen from to coordinate the group; empty where nobody needs to be, or nobody is there. */
    private List<Member> successors(Member member) {
        return isOnlyCoordinator(member) ? othersThan(member.id()) : List.of();
    }

    private boolean isOnlyCoordinator(Member member) {
        return member.present()
                && member.coordinator()
                && othersThan(member.id()).stream().noneMatch(Member::coordinator);
    }

    private List<Member> othersThan(UUID id) {
        return members.all().stream()
                .filter(Member::present)
                .filter(other -> !other.id().equals(id))
                .toList();
    }

    private Member self(Context ctx) {
        return members.find(Visitor.of(ctx).memberId()).orElseThrow(Refusal::notFound);
    }

    private Member gone(Context ctx) {
        Member member = members.find(Respond.id(ctx, "id"))
                .filter(found -> !found.erased())
                .orElseThrow(Refusal::notFound);
        if (member.present()) {
            throw Refusal.conflict(SAY.stillHere(member.name()));
        }
        return member;
    }
}
