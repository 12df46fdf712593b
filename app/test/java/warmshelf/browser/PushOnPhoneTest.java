package warmshelf.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.PUSH_ADDRESS;

import com.google.gson.JsonObject;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.reminder.push.PushKeys;
import warmshelf.reminder.push.PushReader;
import warmshelf.testing.TestGroup;

/**
 * Notices in a real browser. Its maker's push service cannot be reached from a test, so what the browser would get from there is
 * put in its place; the message itself comes by the browser's own tools for developers.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PushOnPhoneTest {
    private static final PushKeys.Texts TEXTS = PushKeys.fresh();
    private static final PushReader DEVICE = PushReader.fresh();

    /** A browser that gets an address, and remembers it in the profile. */
    private static final String SERVICE = """
            const bytes = (text) => Uint8Array.from(atob(text.replace(/-/g, '+').replace(/_/g, '/')), (c) => c.charCodeAt(0));
            const made = (key) => ({
              endpoint: 'https://push.example.test/1',
              options: { applicationServerKey: bytes(key).buffer },
              getKey: (name) => bytes(name === 'auth' ? '%s' : '%s').buffer,
              unsubscribe: async () => { localStorage.removeItem('push'); return true; },
            });
            PushManager.prototype.getSubscription = async () => localStorage.push ? made(localStorage.push) : null;
            PushManager.prototype.subscribe = async (options) => {
              const key = btoa(String.fromCharCode(...options.applicationServerKey)).replace(/\\+/g, '-').replace(/\\//g, '_');
              localStorage.push = key.replace(/=/g, '');
              return made(localStorage.push);
            };
            """.formatted(DEVICE.auth(), DEVICE.p256dh());

    private Chromium chromium;
    private TestGroup group;
    private BrowserContext phone;

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
        group = TestGroup.withPush(PushKeys.of(TEXTS.publicKey(), TEXTS.privateKey(), "mailto:seeds@example.org")
                .orElseThrow());
        phone = chromium.on(Screen.PHONE, group, group.member());
    }

    @AfterEach
    void putItAway() {
        phone.close();
        group.close();
    }

    @Test
    void one_press_adds_the_phone_and_stopping_it_lets_the_browser_forget_its_address() {
        phone.grantPermissions(List.of("notifications"));
        phone.addInitScript(SERVICE);
        Page page = reminders();
        page.getByLabel("What you call this device").fill("Tom’s phone");
        page.locator("#push-add button").click();

        assertThat(page.locator("[data-push=told]")).isVisible();
        assertThat(page.locator("#push-add")).isHidden();
        assertThat(page.locator(".card__title")).hasText("Tom’s phone (this device)");
        assertThat(page.evaluate("() => localStorage.push")).isEqualTo(TEXTS.publicKey());

        page.evaluate("() => localStorage.removeItem('push')");
        page.reload();
        assertThat(page.locator("[data-push=lost]")).isVisible();
        page.locator("#push-add button").click();
        assertThat(page.locator("[data-push=told]")).isVisible();

        page.locator("#push-stop button").click();
        assertThat(page.locator("#push-add")).isVisible();
        assertThat(page.evaluate("() => localStorage.push ?? null")).isNull();
        assertThat(group.database().sql().fetchCount(PUSH_ADDRESS, PUSH_ADDRESS.ENDED_AT.isNull()))
                .isZero();
    }

    @Test
    void permission_is_asked_for_after_the_press_and_not_before() {
        phone.addInitScript("""
                window.asked = 0;
                Object.defineProperty(Notification, 'permission', { get: () => 'default' });
                Notification.requestPermission = async () => { window.asked++; return 'default'; };
                """);
        Page page = reminders();
        assertThat(page.locator("#push-add")).isVisible();
        assertThat(page.evaluate("() => asked")).isEqualTo(0);

        page.locator("#push-add button").click();

        assertThat(page.locator("[data-push=unanswered]")).isVisible();
        assertThat(page.evaluate("() => asked")).isEqualTo(1);
        assertThat(group.database().sql().fetchCount(PUSH_ADDRESS)).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "denied | Object.defineProperty(Notification, 'permission', { get: () => 'denied' }) | Allow them in the browser’s settings",
                "insecure | Object.defineProperty(window, 'isSecureContext', { value: false }) | Ask a coordinator for the https address.",
                "unsupported | delete window.PushManager | ‘Add to home screen’"
            })
    void what_stands_in_the_way_is_said_instead_of_a_button(String state, String script, String words) {
        phone.addInitScript(script);
        Page page = reminders();

        assertThat(page.locator("[data-push=" + state + "]")).isVisible();
        assertThat(page.locator("[data-push=" + state + "]")).containsText(words);
        assertThat(page.locator("#push-add")).isHidden();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "unready | ServiceWorkerContainer.prototype.register = async () => { throw new Error('private') }",
                "unreached | PushManager.prototype.subscribe = async () => { throw new Error('no push service') }"
            })
    void what_fails_after_the_press_is_said_and_can_be_tried_again(String state, String script) {
        phone.grantPermissions(List.of("notifications"));
        phone.addInitScript(script);
        Page page = reminders();

        page.locator("#push-add button").click();

        assertThat(page.locator("[data-push=" + state + "]")).isVisible();
        assertThat(page.locator("#push-add button")).isEnabled();
        assertThat(group.database().sql().fetchCount(PUSH_ADDRESS)).isZero();
    }

    @Test
    void a_message_is_shown_with_its_words_and_leads_to_a_page_of_ours_only() {
        phone.grantPermissions(List.of("notifications"));
        Page page = reminders();
        Push push = new Push(page);

        Map<?, ?> shown = push.shown(
                "{\"title\":\"Mat M1 is too hot\",\"body\":\"Hall cellar\",\"path\":\"/today?show=all\"}   ",
                "Mat M1 is too hot");
        assertThat(shown.get("body")).isEqualTo("Hall cellar");
        assertThat(shown.get("path")).isEqualTo("/today?show=all");

        assertThat(push.pathOf("Elsewhere", "https://evil.example.test/")).isEqualTo("/");
        assertThat(push.pathOf("Beside", "//evil.example.test/")).isEqualTo("/");
        assertThat(push.shown("no JSON", "Warmshelf").get("path")).isEqualTo("/");
    }

    @Test
    void the_worker_tells_the_server_a_new_address() throws IOException {
        phone.grantPermissions(List.of("notifications"));
        phone.addInitScript(SERVICE);
        Page page = reminders();
        page.locator("#push-add button").click();
        assertThat(page.locator("[data-push=told]")).isVisible();
        String script = Files.readString(Path.of("static/js/worker.js"));
        String tell = script.substring(script.indexOf("async function tellNewAddress"));

        // no tool gives a worker this event, so its handler is run beside it
        page.evaluate(
                "([p256dh, auth]) => { %s return tellNewAddress({ newSubscription: { toJSON: () => ({ endpoint:"
                                .formatted(tell)
                        + " 'https://push.example.test/2', keys: { p256dh, auth } }) } }); }",
                List.of(DEVICE.p256dh(), DEVICE.auth()));

        assertThat(group.database().sql().fetchSingle(PUSH_ADDRESS).getEndpoint())
                .isEqualTo("https://push.example.test/2");
    }

    @Test
    void without_scripts_the_devices_are_listed_and_can_be_stopped() {
        phone.grantPermissions(List.of("notifications"));
        phone.addInitScript(SERVICE);
        Page page = reminders();
        page.locator("#push-add button").click();
        assertThat(page.locator("[data-push=told]")).isVisible();
        try (BrowserContext plain = chromium.on(Screen.PHONE, false)) {
            plain.addCookies(phone.cookies().stream()
                    .map(cookie -> new com.microsoft.playwright.options.Cookie(cookie.name, cookie.value)
                            .setUrl(Chromium.address(group)))
                    .toList());
            Page list = plain.newPage();
            list.navigate(Chromium.address(group) + "/reminders");
            assertThat(list.locator("#push-add")).isHidden();
            Locator stop = list.locator("#push-stop button");

            stop.click();

            assertThat(list.locator("main")).containsText("you stopped it");
        }
    }

    private Page reminders() {
        Page page = phone.newPage();
        page.navigate(Chromium.address(group) + "/reminders");
        return page;
    }

    /** The notice with a title, or null where none comes within a while. */
    private static @Nullable Map<?, ?> shown(Page page, String title) {
        return (Map<?, ?>) page.evaluate("""
                async (title) => {
                  const worker = await navigator.serviceWorker.ready;
                  for (const until = Date.now() + 10_000; Date.now() < until; ) {
                    const found = (await worker.getNotifications()).find((each) => each.title === title);
                    if (found) return { body: found.body, path: found.data.path };
                    await new Promise((then) => setTimeout(then, 50));
                  }
                  return null;
                }
                """, title);
    }

    /** Delivers push messages to the page's worker, as the browser would. */
    private final class Push {
        private final Page page;
        private final CDPSession tools;
        private final AtomicReference<String> registration = new AtomicReference<>();

        Push(Page page) {
            this.page = page;
            tools = phone.newCDPSession(page);
            tools.on(
                    "ServiceWorker.workerRegistrationUpdated",
                    news -> news.getAsJsonArray("registrations")
                            .forEach(each -> registration.set(
                                    each.getAsJsonObject().get("registrationId").getAsString())));
            tools.send("ServiceWorker.enable");
            page.evaluate("async () => { await navigator.serviceWorker.register('/worker.js');"
                    + " await navigator.serviceWorker.ready; }");
            page.waitForCondition(() -> registration.get() != null);
        }

        @Nullable
        Object pathOf(String title, String path) {
            return shown("{\"title\":\"%s\",\"body\":\"\",\"path\":\"%s\"}".formatted(title, path), title)
                    .get("path");
        }

        /**
         * Delivers a message until its notice is there. The browser's tools drop one now and then while the worker starts, without
         * saying so; a second one only puts the same notice in place of the first.
         */
        Map<?, ?> shown(String data, String title) {
            for (int i = 0; i < 3; i++) {
                deliver(data);
                Map<?, ?> notice = PushOnPhoneTest.shown(page, title);
                if (notice != null) {
                    return notice;
                }
            }
            throw new AssertionError("no notice with the title " + title);
        }

        private void deliver(String data) {
            JsonObject message = new JsonObject();
            message.addProperty("origin", Chromium.address(group));
            message.addProperty("registrationId", registration.get());
            message.addProperty("data", data);
            tools.send("ServiceWorker.deliverPushMessage", message);
        }
    }
}
