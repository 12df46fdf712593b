package warmshelf.program;

import java.time.Clock;
import java.util.List;
import warmshelf.check.CheckRoom;
import warmshelf.check.RoundStore;
import warmshelf.frost.garden.NightStore;
import warmshelf.frost.garden.ThermometerStore;
import warmshelf.sowing.SowingStores;
import warmshelf.web.BrowserSession;
import warmshelf.web.Pages;
import warmshelf.web.RateLimits;

/** What members' own scripts read and send, wired. */
public final class ProgramRoom {
    private ProgramRoom() {}

    public static List<Pages> pages(
            SowingStores stores, RoundStore rounds, BrowserSession browsers, Clock clock, WatchedFigures figures) {
        ProgramTokenStore tokens = new ProgramTokenStore(stores.database(), stores.audit());
        ThermometerStore thermometers = new ThermometerStore(stores.database(), stores.audit());
        ProgramDoorPages door = new ProgramDoorPages(
                tokens, new ProgramAnswerStore(stores.database(), stores.audit()), new RateLimits(clock), browsers);
        return List.of(
                new ProgramTokenPages(tokens, browsers),
                new ProgramReadPages(
                        door,
                        rounds,
                        new ProgramRowsStore(stores.database()),
                        new ProgramMatStore(stores.database()),
                        thermometers,
                        figures),
                new ProgramWritePages(
                        door,
                        CheckRoom.sentEntries(stores),
                        new NightStore(stores.database(), stores.audit()),
                        thermometers,
                        clock));
    }
}
