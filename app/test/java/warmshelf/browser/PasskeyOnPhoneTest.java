package warmshelf.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.PASSKEY;

import com.google.gson.JsonObject;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Request;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import warmshelf.Server;
import warmshelf.Settings;
import warmshelf.testing.TestGroup;

/** Passkeys in a real browser, whose own pretended phone signs. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PasskeyOnPhoneTest {
    private Chromium chromium;
    private TestGroup group;
    private Server server;
    private BrowserContext phone;
    private Page page;
    private String address;

    @BeforeAll
    void start() {
        chromium = Chromium.open();
    }

    @AfterAll
    void stop() {
        if (chromium != null) {
            chromium.close();
        }
    }

    @BeforeEach
    void takeThePhone() {
        group = TestGroup.open();
        try (Server first = server(0, null)) {
            address = "http://localhost:" + first.port();
        }
        server = server(Integer.parseInt(address.substring("http://localhost:".length())), address);
        phone = chromium.on(Screen.PHONE, true);
        page = phone.newPage();
        CDPSession tools = phone.newCDPSession(page);
        tools.send("WebAuthn.enable");
        tools.send("WebAuthn.addVirtualAuthenticator", pretended());
    }

    @AfterEach
    void putItAway() {
        phone.close();
        server.close();
        group.close();
    }

    private Server server(int port, @Nullable String baseUrl) {
        return Server.start(
                new Settings(
                        "127.0.0.1",
                        port,
                        baseUrl,
                        Path.of("unused"),
                        null,
                        null,
                        null,
                        Set.of(),
                        ZoneId.of("UTC"),
                        null,
                        null),
                group.database(),
                group.clock());
    }

    private static JsonObject pretended() {
        JsonObject options = new JsonObject();
        options.addProperty("protocol", "ctap2");
        options.addProperty("transport", "internal");
        options.addProperty("hasResidentKey", true);
        options.addProperty("hasUserVerification", true);
        options.addProperty("isUserVerified", true);
        JsonObject all = new JsonObject();
        all.add("options", options);
        return all;
    }

    @Test
    void a_phone_is_added_signs_in_once_an_answer_and_no_more_once_it_is_ended() {
        signInByPassphrase();
        addThisPhone();
        assertThat(page.locator("main")).containsText("‘my phone’ now signs you in.");
        signOut();

        AtomicReference<String> answer = new AtomicReference<>("");
        page.onRequest(request -> keep(request, answer));
        page.getByRole(AriaRole.BUTTON, named("Sign in with this phone or computer"))
                .click();
        page.waitForURL(address + "/today");
        assertThat(page.locator("#round")).hasAttribute("data-name", "Tom");
        assertThat(answer.get()).contains("signature");

        assertThat(sent(Objects.requireNonNull(answer.get())))
                .as("the same answer again")
                .isEqualTo(422);

        page.navigate(address + "/settings/passkeys");
        page.getByRole(AriaRole.BUTTON, named("End my phone")).click();
        assertThat(page.locator("main")).containsText("‘my phone’ signs you in no more.");
        assertThat(group.database().sql().fetchCount(PASSKEY)).isZero();
        signOut();
        page.getByRole(AriaRole.BUTTON, named("Sign in with this phone or computer"))
                .click();
        assertThat(page.locator("#passkey-in [role=status]")).containsText("This device did not sign you in");
        assertThat(page).hasURL(Pattern.compile("/sign-in"));
    }

    /** By a number the browser itself makes none for the name; the page's origin is another than the one that was named. */
    @Test
    void at_another_address_of_the_same_server_none_is_added() {
        address = address.replace("localhost", "127.0.0.1");
        signInByPassphrase();
        addThisPhone();

        assertThat(page.locator("#passkey-add [role=status]")).containsText("Nothing was added");
        assertThat(group.database().sql().fetchCount(PASSKEY)).isZero();
    }

    private void signInByPassphrase() {
        page.navigate(address + "/sign-in");
        page.locator("[name=name]").fill(group.member().name());
        page.locator("[name=passphrase]").fill(group.member().passphrase());
        page.locator("main form button[type=submit]").click();
        page.waitForURL(url -> !url.contains("sign-in"));
    }

    private void addThisPhone() {
        page.navigate(address + "/settings/passkeys");
        page.locator("main [name=name]").fill("my phone");
        page.locator("main [name=passphrase]").fill(group.member().passphrase());
        page.getByRole(AriaRole.BUTTON, named("Go on")).click();
        page.getByRole(AriaRole.BUTTON, named("Add this device")).click();
    }

    private void signOut() {
        phone.clearCookies();
        page.navigate(address + "/sign-in");
    }

    private static Page.GetByRoleOptions named(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }

    private static void keep(Request request, AtomicReference<String> answer) {
        if (request.url().contains("/sign-in/passkey?")) {
            answer.set(request.postData());
        }
    }

    private int sent(String answer) {
        return ((Number) page.evaluate("""
                async (body) => (await fetch('/sign-in/passkey', {
                  method: 'POST', headers: { 'Content-Type': 'application/json' }, body })).status""", answer)).intValue();
    }
}
