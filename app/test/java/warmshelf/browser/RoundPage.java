package warmshelf.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The round on a phone. Every press here waits until what it keeps is shown at its tray. The line at the top tells of it by
 * then, so that 'All sent' after a press is news and not what stood there before.
 */
final class RoundPage {
    private static final Pattern NOTHING = Pattern.compile(": nothing (yet|new),");

    private RoundPage() {}

    /** Opens Today and waits until it is kept on the phone. */
    static Page opened(BrowserContext phone, PhoneRound round) {
        Page page = phone.newPage();
        page.navigate(round.address() + "/today");
        ready(page);
        return page;
    }

    /** Waits until the worker has kept the page of the member who is signed in. */
    static void ready(Page page) {
        page.evaluate("""
            async () => {
              const member = document.getElementById('round').dataset.member;
              const kept = async () => {
                const pages = await caches.open('warmshelf-pages');
                const whose = async (key) => (await pages.match(key))?.headers.get('X-Warmshelf-Member');
                return (await Promise.all((await pages.keys()).map(whose))).includes(member);
              };
              for (const until = Date.now() + 60_000; !navigator.serviceWorker.controller || !(await kept()); ) {
                if (Date.now() > until) throw new Error('the worker has not kept the page after a minute');
                await new Promise(then => setTimeout(then, 50));
              }
            }
            """);
        assertThat(status(page)).not().isEmpty();
    }

    /** The addresses of the pages that the worker keeps. */
    static List<?> pagesKept(Page page) {
        return (List<?>) page.evaluate(
                "async () => (await (await caches.open('warmshelf-pages')).keys()).map(each => each.url)");
    }

    static Locator status(Page page) {
        return page.locator("#round-status");
    }

    static Locator item(Page page, PhoneRound round, int tray) {
        return page.locator("#s-" + round.sowing(tray));
    }

    /** What is told at a tray of what was kept there. */
    static Locator lines(Page page, PhoneRound round, int tray) {
        return item(page, round, tray).locator(".round__kept");
    }

    static void nothing(Page page, PhoneRound round, int tray) {
        item(page, round, tray).locator("button[name=nothing]").click();
        untilTold(page, round, tray, NOTHING);
    }

    static void count(Page page, PhoneRound round, int tray, String sprouted) {
        item(page, round, tray).locator("input[name=sprouted]").fill(sprouted);
        item(page, round, tray).locator("button[type=submit]:not([name])").click();
        untilTold(page, round, tray, Pattern.compile(": " + sprouted + " so far,"));
    }

    /** Waits until all is sent, and then asks the server how many looks it has. */
    static void allSent(Page page, PhoneRound round, int looks) {
        assertThat(status(page)).containsText("All sent");
        assertThat(round.looks()).isEqualTo(looks);
    }

    private static void untilTold(Page page, PhoneRound round, int tray, Pattern words) {
        Locator.FilterOptions thatSay = new Locator.FilterOptions().setHasText(words);
        assertThat(lines(page, round, tray).filter(thatSay)).isVisible();
    }
}
