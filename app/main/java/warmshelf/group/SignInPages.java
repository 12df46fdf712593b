package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.web.BrowserSession;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** Signing in by passphrase or by a link, and signing out. */
public final class SignInPages implements Pages {
    private final AdmissionStore admissions;
    private final MemberStore members;
    private final SessionStore sessions;
    private final Passphrases passphrases;
    private final DoorPages door;
    private final BrowserSession browsers;
    private final boolean passkeys;

    public SignInPages(
            AdmissionStore admissions,
            MemberStore members,
            SessionStore sessions,
            Passphrases passphrases,
            DoorPages door,
            BrowserSession browsers,
            boolean passkeys) {
        this.admissions = admissions;
        this.members = members;
        this.sessions = sessions;
        this.passphrases = passphrases;
        this.door = door;
        this.browsers = browsers;
        this.passkeys = passkeys;
    }

    @Override
    public void register(RoutesConfig routes) {
        // Anyone: this is how one becomes someone.
        routes.get("/sign-in", this::ask, Role.ANYONE);
        routes.post("/sign-in", this::signIn, Role.ANYONE);
        // Anyone: the link's token is the right.
        routes.get("/in/{token}", this::askByLink, Role.ANYONE);
        routes.post("/in/{token}", this::signInByLink, Role.ANYONE);
        routes.post("/sign-out", this::signOut, Role.MEMBER);
    }

    private void ask(Context ctx) {
        String then = LocalPath.orHome(ctx.queryParam("then"));
        if (Visitor.maybe(ctx).isPresent()) {
            ctx.redirect(then, HttpStatus.SEE_OTHER);
            return;
        }
        Respond.page(ctx, "group/sign-in.peb", new SignInPage(new FormReader(Map.of()), then, passkeys));
    }

    private void signIn(Context ctx) {
        FormReader form = new FormReader(ctx.formParamMap());
        String then = LocalPath.orHome(form.text("then"));
        String name = form.requiredText("name", SAY.ownNameField(), 60);
        String passphrase = form.requiredText("passphrase", SAY.passphraseField(), Passphrases.LONGEST);
        if (form.ok()) {
            Optional<Member> member = members.named(name);
            @Nullable
            String hash =
                    member.map(found -> members.passphraseHash(found.id())).orElse(null);
            door.limitSignIn(ctx, name, hash);
            if (passphrases.fits(passphrase, hash) && hash != null) {
                browsers.remember(ctx, Member.key(name), hash);
                UUID memberId = member.orElseThrow().id();
                browsers.letIn(ctx, sessions.open(memberId));
                door.noteComingIn(ctx, memberId, "passphrase");
                ctx.redirect(then, HttpStatus.SEE_OTHER);
                return;
            }
            door.noteRefusal(ctx, member.map(Member::id).orElse(null));
            form.refuse("name", SAY.noSuchPassphrase());
        }
        Respond.again(ctx, "group/sign-in.peb", new SignInPage(form, then, passkeys));
    }

    // Chat programs fetch links to preview them, so only the button on the page uses a link up.
    private void askByLink(Context ctx) {
        Link link = openLink(ctx);
        Respond.page(ctx, "group/in.peb", new LinkPage(link, new FormReader(Map.of())));
    }

    private void signInByLink(Context ctx) {
        Link link = openLink(ctx);
        UUID memberId = presentMember(link);
        FormReader form = new FormReader(ctx.formParamMap());
        boolean newPassphrase = link.oneUse() && !form.text("passphrase").isEmpty();
        String passphrase =
                newPassphrase ? PassphraseRule.read(form, "passphrase", SAY.newPassphraseField(), link.note()) : "";
        if (!form.ok()) {
            Respond.again(ctx, "group/in.peb", new LinkPage(link, form));
            return;
        }
        @Nullable String hash = newPassphrase ? passphrases.hash(passphrase) : null;
        browsers.letIn(ctx, Decisions.doneOr(admissions.signIn(link, memberId, hash), Units.METRIC));
        door.noteComingIn(ctx, memberId, "link");
        ctx.redirect(LocalPath.HOME, HttpStatus.SEE_OTHER);
    }

    private Link openLink(Context ctx) {
        return door.openLink(ctx, LinkPurpose.SIGN_IN);
    }

    private UUID presentMember(Link link) {
        return Optional.ofNullable(link.memberId())
                .flatMap(members::find)
                .filter(Member::present)
                .map(Member::id)
                .orElseThrow(() -> Refusal.gone(SAY.linkOfSomebodyGone()));
    }

    private void signOut(Context ctx) {
        browsers.signOut(ctx);
        Respond.seeOther(ctx, "/sign-in", SAY.signedOut());
    }

    /**
     * @param then the page that was asked for
     * @param passkeys whether a device can sign somebody in
     */
    private record SignInPage(FormReader form, String then, boolean passkeys) {}

    private record LinkPage(Link link, FormReader form) {}
}
