package warmshelf.passkey;

import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.group.DoorPages;
import warmshelf.group.MemberStore;
import warmshelf.group.Passphrases;
import warmshelf.group.SessionStore;
import warmshelf.web.BrowserSession;
import warmshelf.web.Pages;

/** Passkeys, wired. */
public final class PasskeyRoom {
    private PasskeyRoom() {}

    /**
     * The pages, wired.
     *
     * @param baseUrl the address that people type; null: it is not known, and no passkeys are offered
     */
    public static List<Pages> pages(
            Database database,
            Audit audit,
            SessionStore sessions,
            MemberStore members,
            Passphrases passphrases,
            DoorPages door,
            BrowserSession browsers,
            @Nullable String baseUrl) {
        PasskeyStore passkeys = new PasskeyStore(database, audit, sessions);
        @Nullable PasskeyParty party = PasskeyParty.at(baseUrl).orElse(null);
        return List.of(
                new PasskeyPages(passkeys, members, passphrases, door, browsers, party),
                new PasskeyDoorPages(passkeys, door, browsers, party));
    }
}
