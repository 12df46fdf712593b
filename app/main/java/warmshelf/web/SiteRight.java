package warmshelf.web;

import static warmshelf.web.WebSentences.SAY;

import java.util.Collection;
import java.util.Set;
import java.util.UUID;

/** Holds coordinators of a site to their site, where a form or an address names things of one. */
public final class SiteRight {
    private SiteRight() {}

    /**
     * Lets a visitor decide at some sites.
     *
     * @throws Refusal when any of them is not theirs
     */
    public static void require(Visitor visitor, Collection<UUID> sites) {
        if (!visitor.reach().coversAll(sites)) {
            throw Refusal.forbidden(visitor.reach().coordinates() ? SAY.atAnotherSite() : SAY.forCoordinators());
        }
    }

    public static void require(Visitor visitor, UUID site) {
        require(visitor, Set.of(site));
    }
}
