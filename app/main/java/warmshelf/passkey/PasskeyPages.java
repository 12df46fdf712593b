package warmshelf.passkey;

import static warmshelf.passkey.PasskeySentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.decision.Decision;
import warmshelf.group.DoorPages;
import warmshelf.group.MemberStore;
import warmshelf.group.Passphrases;
import warmshelf.web.BrowserSession;
import warmshelf.web.Decisions;
import warmshelf.web.Notice;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Where members add the devices that sign them in, and end them. */
final class PasskeyPages implements Pages {
    private static final String ADDRESS = "/settings/passkeys";
    private static final String TEMPLATE = "passkey/passkeys.peb";
    private static final int LONGEST_NAME = 60;

    private final PasskeyStore passkeys;
    private final MemberStore members;
    private final Passphrases passphrases;
    private final DoorPages door;
    private final BrowserSession browsers;
    private final @Nullable PasskeyParty party;

    PasskeyPages(
            PasskeyStore passkeys,
            MemberStore members,
            Passphrases passphrases,
            DoorPages door,
            BrowserSession browsers,
            @Nullable PasskeyParty party) {
        this.passkeys = passkeys;
        this.members = members;
        this.passphrases = passphrases;
        this.door = door;
        this.browsers = browsers;
        this.party = party;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS, this::show, Role.MEMBER);
        routes.post(ADDRESS + "/question", this::ask, Role.MEMBER);
        routes.post(ADDRESS + "/answer", this::add, Role.MEMBER);
        routes.post(ADDRESS + "/{id}/end", this::end, Role.MEMBER);
    }

    @Override
    public Set<String> forScripts() {
        return Set.of(ADDRESS + "/answer");
    }

    /** @param question what the browser is to be asked, as JSON; null: nothing yet */
    private record PasskeysPage(
            FormReader form,
            boolean offered,
            List<Passkey> passkeys,
            @Nullable String question) {}

    private void show(Context ctx) {
        Respond.page(ctx, TEMPLATE, page(ctx, new FormReader(Map.of()), null));
    }

    private PasskeysPage page(Context ctx, FormReader form, @Nullable String question) {
        Visitor visitor = Visitor.of(ctx);
        return new PasskeysPage(form, party != null, passkeys.of(visitor.memberId(), visitor.zone()), question);
    }

    /** The passphrase is asked for, so that a phone left lying signed in does not let its finder in for good. */
    private void ask(Context ctx) {
        PasskeyParty here = offered();
        Visitor visitor = Visitor.of(ctx);
        door.limitChange(visitor.memberId());
        FormReader form = new FormReader(ctx.formParamMap());
        String name = form.requiredText("name", SAY.nameField(), LONGEST_NAME);
        String passphrase = form.requiredText("passphrase", SAY.passphraseField(), Passphrases.LONGEST);
        if (form.ok() && !passphrases.fits(passphrase, members.passphraseHash(visitor.memberId()))) {
            form.refuse("passphrase", SAY.passphraseWrong());
        }
        if (!form.ok()) {
            Respond.again(ctx, TEMPLATE, page(ctx, form, null));
            return;
        }
        Respond.page(ctx, TEMPLATE, page(ctx, form, question(here, visitor, passkeys.ask(visitor.memberId(), name))));
    }

    private String question(PasskeyParty here, Visitor visitor, String challenge) {
        Map<String, Object> question = new LinkedHashMap<>();
        question.put("rp", Map.of("id", here.id(), "name", visitor.groupName()));
        question.put(
                "user",
                Map.of("id", handle(visitor.memberId()), "name", visitor.name(), "displayName", visitor.name()));
        question.put("challenge", challenge);
        question.put(
                "pubKeyCredParams",
                PasskeyCheck.kinds().stream()
                        .map(kind -> Map.of("type", "public-key", "alg", kind))
                        .toList());
        question.put("timeout", PasskeyStore.LIFE.toMillis());
        question.put("attestation", "none");
        question.put("authenticatorSelection", Map.of("residentKey", "required", "userVerification", "required"));
        question.put(
                "excludeCredentials",
                passkeys.credentials(visitor.memberId()).stream()
                        .map(id -> Map.of("type", "public-key", "id", id))
                        .toList());
        return PasskeyJson.text(question);
    }

    /** A word of its own for the member, which names nobody. */
    private static String handle(UUID memberId) {
        return Base64.getUrlEncoder()
                .withoutPadding()
                .encodeToString(memberId.toString().getBytes(StandardCharsets.UTF_8));
    }

    private void add(Context ctx) {
        PasskeyParty here = offered();
        Visitor visitor = Visitor.of(ctx);
        String answer = ctx.body();
        Optional<PasskeyCheck.Claim> claim = PasskeyCheck.claim(answer);
        Optional<String> name = claim.flatMap(said -> passkeys.useUp(said.challenge(), visitor.memberId()));
        Optional<PasskeyCheck.Key> key = name.flatMap(
                asked -> new PasskeyCheck(here).made(answer, claim.orElseThrow().challenge()));
        if (key.isEmpty()) {
            throw Refusal.of(HttpStatus.UNPROCESSABLE_CONTENT, SAY.notAdded());
        }
        Decision<UUID> added = passkeys.add(visitor.memberId(), name.orElseThrow(), key.get());
        Decisions.doneOr(added, visitor.units());
        Notice.leave(ctx, SAY.added(name.orElseThrow()));
        ctx.json(Map.of("then", ADDRESS));
    }

    private void end(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        PasskeyStore.Ended ended =
                Decisions.doneOr(passkeys.end(Respond.id(ctx, "id"), visitor.memberId()), visitor.units());
        browsers.letIn(ctx, ended.session());
        Respond.seeOther(ctx, ADDRESS, SAY.ended(ended.name()));
    }

    private PasskeyParty offered() {
        if (party == null) {
            throw Refusal.conflict(SAY.notOffered());
        }
        return party;
    }
}
