package warmshelf.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.concurrent.locks.LockSupport;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.Upload;

/** Waits for what is read in the background. */
final class Waiting {
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private Waiting() {}

    /** Waits until a file is not being read any more; returns its address. */
    static String untilRead(Browser browser, String address) {
        long until = System.nanoTime() + PATIENCE.toNanos();
        while (browser.getJson(address).body().contains("\"busy\":true")) {
            assertThat(System.nanoTime()).as("a moment before patience ends").isLessThan(until);
            LockSupport.parkNanos(20_000_000);
        }
        return address;
    }

    /** Takes a file in, to the end. */
    static void take(Browser browser, String address) {
        assertThat(browser.post(address + "/taking").status()).isEqualTo(303);
        untilRead(browser, address);
    }

    /** Sends a table and waits until it was looked at; answers with the address of what was found. */
    static String sent(Browser browser, Upload upload) {
        Answer answer = upload.post(browser, "/files/incoming");
        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
        return untilRead(browser, answer.location());
    }
}
