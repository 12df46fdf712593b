package warmshelf.group;

import java.time.Duration;
import warmshelf.db.Audit;
import warmshelf.web.RateLimits;
import warmshelf.web.Refusal;

/** Where people come in, by a link or by passphrase: it knows which links are open and slows down guessing. */
public final class Doorway {
    private final LinkStore links;
    private final RateLimits limits;
    private final Audit audit;

    public Doorway(LinkStore links, RateLimits limits, Audit audit) {
        this.links = links;
        this.limits = limits;
        this.audit = audit;
    }

    /**
     * The open link that a token stands for.
     *
     * @param address where the request comes from
     * @throws Refusal when it is unknown, used, expired or withdrawn, or too many were tried from the address
     */
    public Link openLink(String address, LinkPurpose purpose, String token) {
        limits.take("link from " + address, 40, Duration.ofSeconds(10));
        Link link = links.find(purpose, token)
                .orElseThrow(() -> Refusal.notFound(
                        "This link is not known here. Check that it was copied whole, or ask for a new one."));
        if (!link.open(audit.now())) {
            throw spent(link.used());
        }
        return link;
    }

    /** What to say of a link that lets nobody in any more. */
    public static Refusal spent(boolean used) {
        return Refusal.gone(
                used
                        ? "This link has been used already; it works once only. If you have joined, sign in."
                                + " If somebody else used it, ask for a new one."
                        : "This link has expired or was withdrawn. Ask for a new one.");
    }

    /** @throws Refusal when this address, or anyone for this name, tried too often */
    void limitSignIn(String address, String name) {
        limits.take("sign-in from " + address, 20, Duration.ofSeconds(15));
        limits.take("sign-in as " + Member.key(name), 10, Duration.ofMinutes(1));
    }
}
