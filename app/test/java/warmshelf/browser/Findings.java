package warmshelf.browser;

import com.microsoft.playwright.ConsoleMessage;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;

/** What a browser found wrong while it walked some pages: sentences by kind, each beginning with the page's name. */
final class Findings {
    /** The levels A and AA of WCAG 2.0, 2.1 and 2.2, as the checker axe-core labels its rules. */
    private static final List<String> WCAG = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

    private static final String PAST_THE_EDGE = """
            width => document.scrollingElement.scrollWidth <= width ? [] : [...document.querySelectorAll('body *')]
                .filter(e => e.getBoundingClientRect().right > width + 1 && !e.closest('[tabindex="0"], svg'))
                .map(e => e.tagName.toLowerCase() + '.' + e.getAttribute('class')).slice(0, 4)
                .concat(document.scrollingElement.scrollWidth + ' px')
            """;

    private final Map<String, List<String>> byKind = new TreeMap<>();
    private final Set<Page> firstOf = new HashSet<>();

    List<String> of(String kind) {
        return byKind.getOrDefault(kind, List.of());
    }

    /**
     * Opens a page on a phone, unfolds what is folded on it, and looks at it: by day, in the dark and at 320 pixels. Then the screen
     * becomes a desktop's. Colours are the same on every width: there only those of the first page of each visitor are looked at, for
     * the sake of the navigation.
     */
    void look(Page page, String name, String address) {
        Consumer<ConsoleMessage> listener = message -> {
            if (message.type().equals("error") && !ownStatus(message, address)) {
                add("console", name + ": " + message.text());
            }
        };
        page.onConsoleMessage(listener);
        become(page, Screen.PHONE);
        page.navigate(address);
        unfold(page);
        report(name + " on a phone", Axe.violations(page, "tag", WCAG));
        measure(page, name + " on a phone");
        lookInTheDark(page, name);
        become(page, Screen.NARROW);
        measure(page, name + " at " + Screen.NARROW.width() + " px");
        become(page, Screen.DESKTOP);
        if (address.contains("/today")) {
            // the round is laid out for the screen on which it is opened
            page.navigate(address);
            unfold(page);
        }
        report(name + " on a desktop", Axe.violations(page, "tag", WCAG, firstOf.add(page)));
        measure(page, name + " on a desktop");
        page.offConsoleMessage(listener);
    }

    private static void become(Page page, Screen screen) {
        page.setViewportSize(screen.width(), screen.height());
    }

    private void lookInTheDark(Page page, String name) {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        // only the colours change in the dark
        report(name + " in the dark", Axe.violations(page, "rule", List.of("color-contrast")));
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
    }

    private static void unfold(Page page) {
        page.evaluate("() => document.querySelectorAll('main details').forEach(folded => folded.open = true)");
    }

    private void report(String name, List<?> violations) {
        violations.forEach(violation -> add("accessibility", name + ": " + violation));
    }

    private void measure(Page page, String name) {
        List<?> past = (List<?>) page.evaluate(PAST_THE_EDGE, page.viewportSize().width);
        if (!past.isEmpty()) {
            add("width", name + ": " + past);
        }
    }

    /** A browser writes the status of a page that answers 4xx or 5xx to its console; that is no fault of the page. */
    private static boolean ownStatus(ConsoleMessage message, String address) {
        return message.text().startsWith("Failed to load resource")
                && message.location().startsWith(address);
    }

    private void add(String kind, String sentence) {
        byKind.computeIfAbsent(kind, unused -> new ArrayList<>()).add(sentence);
    }

    @Override
    public String toString() {
        return Arrays.toString(byKind.entrySet().toArray());
    }
}
