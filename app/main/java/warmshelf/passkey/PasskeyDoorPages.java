package warmshelf.passkey;

import static warmshelf.passkey.PasskeySentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.decision.Decision;
import warmshelf.group.DoorPages;
import warmshelf.group.LocalPath;
import warmshelf.web.BrowserSession;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Role;

/** Signing in by a passkey: nobody is named, and every no is the same. */
final class PasskeyDoorPages implements Pages {
    private final PasskeyStore passkeys;
    private final DoorPages door;
    private final BrowserSession browsers;
    private final @Nullable PasskeyParty party;

    PasskeyDoorPages(PasskeyStore passkeys, DoorPages door, BrowserSession browsers, @Nullable PasskeyParty party) {
        this.passkeys = passkeys;
        this.door = door;
        this.browsers = browsers;
        this.party = party;
    }

    @Override
    public void register(RoutesConfig routes) {
        // Anyone: this is how one becomes someone.
        routes.post("/sign-in/passkey/question", this::ask, Role.ANYONE);
        routes.post("/sign-in/passkey", this::signIn, Role.ANYONE);
    }

    private void ask(Context ctx) {
        PasskeyParty here = offered();
        door.limitPasskey(ctx);
        ctx.json(Map.of(
                "challenge",
                passkeys.ask(null, ""),
                "rpId",
                here.id(),
                "timeout",
                PasskeyStore.LIFE.toMillis(),
                "userVerification",
                "required",
                "allowCredentials",
                List.of()));
    }

    private void signIn(Context ctx) {
        PasskeyParty here = offered();
        door.limitPasskey(ctx);
        String answer = ctx.body();
        Optional<PasskeyCheck.Claim> claim = PasskeyCheck.claim(answer);
        boolean asked =
                claim.flatMap(said -> passkeys.useUp(said.challenge(), null)).isPresent();
        Optional<PasskeyStore.Kept> kept =
                claim.filter(said -> asked).flatMap(said -> passkeys.find(said.credential()));
        Optional<Long> count = kept.flatMap(
                key -> new PasskeyCheck(here).signed(answer, claim.orElseThrow().challenge(), key.key()));
        Decision<String> session = count.map(now -> passkeys.open(kept.orElseThrow(), now))
                .orElseGet(() -> new Decision.Refused<>(new PasskeyRefusal.NotProved()));
        if (!(session instanceof Decision.Done<String> done)) {
            throw Refusal.of(HttpStatus.UNPROCESSABLE_CONTENT, SAY.notProved());
        }
        browsers.letIn(ctx, done.value());
        door.noteComingIn(ctx, kept.orElseThrow().memberId(), "passkey");
        ctx.json(Map.of("then", LocalPath.orHome(ctx.queryParam("then"))));
    }

    private PasskeyParty offered() {
        if (party == null) {
            throw Refusal.conflict(SAY.notOffered());
        }
        return party;
    }
}
