package warmshelf.tablet;

import static warmshelf.tablet.TabletSentences.SAY;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.web.LookerCookie;
import warmshelf.web.Refusal;
import warmshelf.web.TabletVisit;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;

/** What all pages at which something is ticked share: how far whoever asks may reach, and who says that they tick. */
public final class TabletReachPages {
    private final TabletReachStore reaches;
    private final LookerCookie cookie;

    TabletReachPages(TabletReachStore reaches, LookerCookie cookie) {
        this.reaches = reaches;
        this.cookie = cookie;
    }

    /** What the visitor may tick. */
    public TickReach of(Visitor visitor) {
        @Nullable TabletVisit tablet = visitor.tablet();
        return tablet == null ? TickReach.OF_MEMBERS : reaches.of(tablet.siteId(), visitor.today());
    }

    /**
     * Lets a visitor go on with a sowing.
     *
     * @throws Refusal where a tablet asks for one that never lay at its site
     */
    public void needSowing(Visitor visitor, UUID sowing) {
        if (!of(visitor).hasSowing(sowing)) {
            throw Refusal.forbidden(SAY.otherSite());
        }
    }

    /**
     * Lets a visitor go on with a mat.
     *
     * @throws Refusal where a tablet asks for one of another site
     */
    public void needMat(Visitor visitor, UUID mat) {
        if (!of(visitor).hasMat(mat)) {
            throw Refusal.forbidden(SAY.otherSite());
        }
    }

    /** Who could stand before a tablet. */
    public List<Choice> lookers() {
        return reaches.lookers();
    }

    /** Who ticks on a tablet, who stays known for as long again; empty: the tablet itself, or a member for themself. */
    public Optional<UUID> looker(Context ctx, Visitor visitor) {
        Optional<UUID> looker = cookie.read(ctx).filter(of(visitor)::mayHaveLooked);
        looker.ifPresent(who -> cookie.set(ctx, who));
        return looker;
    }

    /**
     * Keeps who ticks from now on.
     *
     * @param who null: the tablet itself
     */
    public void keepLooker(Context ctx, @Nullable UUID who) {
        if (who == null) {
            cookie.clear(ctx);
        } else {
            cookie.set(ctx, who);
        }
    }
}
