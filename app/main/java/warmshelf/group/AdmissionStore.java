package warmshelf.group;

import java.util.UUID;
import java.util.function.Function;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;

/** Lets people in: each way in is one transaction, so a link is used up exactly when somebody came in by it. */
public final class AdmissionStore {
    private final Database database;
    private final MemberStore members;
    private final LinkStore links;
    private final SessionStore sessions;

    public AdmissionStore(Database database, MemberStore members, LinkStore links, SessionStore sessions) {
        this.database = database;
        this.members = members;
        this.links = links;
        this.sessions = sessions;
    }

    /** Takes a new member in by a link; the token of their session, or a no when the name is taken. */
    public Decision<String> join(Link link, NewMember person) {
        return byLink(link, sql -> members.add(sql, person, link.coordinator(), "by a link: " + link.note()));
    }

    /**
     * Signs a member in by a link: the token of the new session.
     *
     * @param newHash of the passphrase to be valid from now on; null: the old one stays
     */
    Decision<String> signIn(Link link, UUID memberId, @Nullable String newHash) {
        return byLink(link, sql -> {
            if (newHash != null) {
                members.setPassphrase(sql, memberId, newHash);
            }
            return memberId;
        });
    }

    /** Sets a new passphrase, ends every session of the member, and returns the token of a new one. */
    String changePassphrase(UUID memberId, String newHash) {
        return database.sql().transactionResult(inside -> {
            members.setPassphrase(inside.dsl(), memberId, newHash);
            return sessions.open(inside.dsl(), memberId);
        });
    }

    /**
     * Uses a link up, lets the steps given find or make the member, and opens a session, all or nothing.
     *
     * @return the session's token; gone when somebody was quicker or the link has just expired
     */
    public Decision<String> byLink(Link link, Function<DSLContext, UUID> steps) {
        return Decision.of(() -> database.sql().transactionResult(inside -> {
            DSLContext sql = inside.dsl();
            // Using the link up locks its row, so of two people with it the second finds it spent.
            if (!links.use(sql, link)) {
                throw Declined.gone(link.oneUse() ? new GroupRefusal.LinkUsed() : new GroupRefusal.LinkClosed());
            }
            UUID memberId = steps.apply(sql);
            links.noteUser(sql, link, memberId);
            return sessions.open(sql, memberId);
        }));
    }
}
