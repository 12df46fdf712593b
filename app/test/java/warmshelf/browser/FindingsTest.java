package warmshelf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The control of the walk over every page: a bad page must not pass it. */
class FindingsTest {
    private static final String BAD = """
            <!doctype html><html lang="en"><head><title>Bad</title><script>console.log('inline')</script></head>
            <body><main><img src="data:image/gif;base64,R0lGODlhAQABAAAAACw="><svg width="700" height="9"></svg></main></body></html>
            """;

    @Test
    void a_page_without_alternatives_too_wide_and_with_an_inline_script_is_found_out() {
        Findings findings = new Findings();
        try (Chromium chromium = Chromium.open()) {
            Page page = chromium.on(Screen.PHONE, true).newPage();
            page.route(
                    "**/*",
                    route -> route.fulfill(new Route.FulfillOptions()
                            .setContentType("text/html")
                            .setHeaders(Map.of("Content-Security-Policy", "script-src 'self'"))
                            .setBody(BAD)));
            findings.look(page, "bad", "http://127.0.0.1/");
        }

        assertThat(findings.of("accessibility")).anyMatch(found -> found.contains("image-alt"));
        assertThat(findings.of("width")).hasSize(2);
        assertThat(findings.of("console")).anyMatch(found -> found.contains("Content Security Policy"));
    }
}
