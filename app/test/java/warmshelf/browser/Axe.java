package warmshelf.browser;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The accessibility checker axe-core, put into a page once and then asked for violations only: the library's own way puts it in
 * anew for each question and works out the address of every element that is in order too, which costs most of the time.
 */
final class Axe {
    private static final String SOURCE = source();

    /** Sentences, one for each rule that is broken, with the first elements that break it. */
    private static final String ASK = """
            async ({ runOnly, colours }) => {
                const rules = colours ? {} : { 'color-contrast': { enabled: false } };
                const found = await axe.run(document, { runOnly, rules, resultTypes: ['violations'] });
                return found.violations.map(rule => `${rule.help} (${rule.id}) at `
                    + JSON.stringify(rule.nodes.slice(0, 3).map(node => node.html)));
            }
            """;

    private Axe() {}

    /** @param kind 'tag' or 'rule' */
    static List<?> violations(Page page, String kind, List<String> values) {
        return violations(page, kind, values, true);
    }

    /**
     * The same, with or without the contrast of colours, which takes longer than all other rules together.
     *
     * @param colours whether they are looked at
     */
    static List<?> violations(Page page, String kind, List<String> values, boolean colours) {
        if (!(boolean) page.evaluate("() => 'axe' in window")) {
            page.evaluate(SOURCE);
        }
        return (List<?>)
                page.evaluate(ASK, Map.of("runOnly", Map.of("type", kind, "values", values), "colours", colours));
    }

    private static String source() {
        try (InputStream script = AxeBuilder.class.getResourceAsStream("/axe.min.js")) {
            return new String(Objects.requireNonNull(script).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
