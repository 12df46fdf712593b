package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import io.javalin.http.Context;
import java.time.Duration;
import warmshelf.db.Audit;
import warmshelf.web.BrowserSession;
import warmshelf.web.RateLimits;
import warmshelf.web.Refusal;

/** What all pages at which people come in share, by a link or by passphrase: which links are open, and guessing slowed down. */
public final class DoorPages {
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
    Link openLink(Context ctx, LinkPurpose purpose) {
        limits.take("link from " + browsers.address(ctx), 40, Duration.ofSeconds(10));
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

    /** @throws Refusal when the address that the request comes from, or anyone for this name, tried too often */
    void limitSignIn(Context ctx, String name) {
        limits.take("sign-in from " + browsers.address(ctx), 20, Duration.ofSeconds(15));
        limits.take("sign-in as " + Member.key(name), 10, Duration.ofMinutes(1));
    }
}
