package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import io.javalin.http.Context;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import warmshelf.db.Audit;
import warmshelf.web.BrowserSession;
import warmshelf.web.RateLimits;
import warmshelf.web.Refusal;

/** What all pages at which people come in share, by a link or by passphrase: which links are open, and guessing slowed down. */
public final class DoorPages {
    private static final Logger LOG = LoggerFactory.getLogger(DoorPages.class);

    private final LinkStore links;
    private final RateLimits limits;
    private final Audit audit;
    private final BrowserSession browsers;

    public DoorPages(LinkStore links, RateLimits limits, Audit audit, BrowserSession browsers) {
        this.links = links;
        this.limits = limits;
        this.audit = audit;
        this.browsers = browsers;
    }

    /**
     * The open link that the token in a page's address stands for.
     *
     * @throws Refusal when it is unknown, used, expired or withdrawn, or too many were tried from where the request comes
     */
    public Link openLink(Context ctx, LinkPurpose purpose) {
        take(GuessLimit.LINKS_FROM_ADDRESS, browsers.address(ctx));
        Link link = links.find(purpose, ctx.pathParam("token")).orElseThrow(() -> Refusal.notFound(SAY.linkUnknown()));
        if (!link.open(audit.now())) {
            throw spent(link.used());
        }
        return link;
    }

    /** What to say of a link that lets nobody in any more. */
    static Refusal spent(boolean used) {
        return Refusal.gone(used ? SAY.linkUsed() : SAY.linkClosed());
    }

    /**
     * Slows down guessing at a passphrase: by where it comes from, and by the name where many ask for it from many places. A
     * device on which its owner came in before has tries of its own, so that no stranger can keep the owner out.
     *
     * @param passphraseHash the member's, as kept; null for a name that nobody has
     * @throws Refusal when there were too many
     */
    void limitSignIn(Context ctx, String name, @Nullable String passphraseHash) {
        Optional<String> known = browsers.knownDevice(ctx, Member.key(name), passphraseHash);
        if (known.isPresent()) {
            take(GuessLimit.SIGN_IN_ON_KNOWN_DEVICE, known.get());
            return;
        }
        String address = browsers.address(ctx);
        take(GuessLimit.SIGN_IN_FROM_ADDRESS, address);
        take(GuessLimit.SIGN_IN_BY_NAME_FROM_ADDRESS, Member.key(name) + " from " + address);
        take(GuessLimit.SIGN_IN_BY_NAME, Member.key(name));
    }

    /**
     * Slows down whoever tries passkeys, by where they come from: a passkey names nobody.
     *
     * @throws Refusal when there were too many
     */
    public void limitPasskey(Context ctx) {
        take(GuessLimit.PASSKEYS_FROM_ADDRESS, browsers.address(ctx));
    }

    /** Notes for whoever runs the server that somebody came in. */
    public void noteComingIn(Context ctx, UUID memberId, String how) {
        LOG.info("member {} came in by {} from {}", memberId, how, browsers.address(ctx));
    }

    /**
     * Notes for whoever runs the server that somebody tried in vain. What was typed is not noted: people type their passphrase
     * into the field of the name.
     *
     * @param memberId whose name it was; null for a name that nobody has
     */
    void noteRefusal(Context ctx, @Nullable UUID memberId) {
        LOG.info(
                "a passphrase was wrong for {} from {}",
                memberId == null ? "a name that nobody has" : "member " + memberId,
                browsers.address(ctx));
    }

    /**
     * Slows down guessing by somebody who is signed in.
     *
     * @throws Refusal when a member tried too often with their passphrase, to change it or to be erased
     */
    public void limitChange(UUID memberId) {
        take(GuessLimit.PASSPHRASE_CHANGE, memberId.toString());
    }

    private void take(GuessLimit limit, String whose) {
        limits.take(limit + " " + whose, limit.tries(), limit.oneBackEach());
    }
}
