package warmshelf.bench;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.regex.Pattern;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.FormFiller;
import warmshelf.testing.PageForm;

/** Somebody who opens pages one after another and sends what stands there to be sent, until told to stop. */
final class SoakPerson implements Runnable {
    private static final int SENT_A_PAGE = 6;
    private static final Pattern THINGS = Pattern.compile("href=\"(/(?:stays|requests|sowings|seeds)/[0-9a-f-]{36})\"");

    private final Browser browser;
    private final String name;
    private final List<String> pages;
    private final Pattern sends;
    private final Clock clock;
    private final String passphrase;
    private final SoakTally tally;
    private final AtomicBoolean goesOn;
    private final Random chance;

    /**
     * @param name by which to sign in
     * @param pages which pages are opened; what they link to is looked into as well
     * @param sends the addresses to which forms are sent
     */
    SoakPerson(
            Browser browser,
            String name,
            List<String> pages,
            Pattern sends,
            Clock clock,
            String passphrase,
            SoakTally tally,
            AtomicBoolean goesOn,
            Random chance) {
        this.browser = browser;
        this.name = name;
        this.pages = pages;
        this.sends = sends;
        this.clock = clock;
        this.passphrase = passphrase;
        this.tally = tally;
        this.goesOn = goesOn;
        this.chance = chance;
    }

    @Override
    public void run() {
        while (goesOn.get()) {
            String page = pages.get(chance.nextInt(pages.size()));
            try {
                Answer seen = open(page);
                List<String> things = THINGS.matcher(seen.body())
                        .results()
                        .map(thing -> thing.group(1))
                        .distinct()
                        .toList();
                if (!things.isEmpty()) {
                    String thing = things.get(chance.nextInt(things.size()));
                    send(thing, open(thing));
                }
                send(page, seen);
            } catch (RuntimeException broken) {
                tally.brokeOff(page, broken);
            }
        }
    }

    private Answer open(String page) {
        long asked = System.nanoTime();
        Answer answer = browser.get(page);
        tally.answered("GET", page, answer.status(), (System.nanoTime() - asked) / 1e6);
        if (answer.location().startsWith("/sign-in")) {
            // a month went by without a page: the session is over, as it should be
            signIn();
        }
        return answer;
    }

    private void signIn() {
        Answer answer = browser.post("/sign-in", Map.of("name", name, "passphrase", passphrase));
        tally.answered("POST", "/sign-in", answer.status(), 0);
    }

    private void send(String page, Answer seen) {
        List<PageForm> forms = new ArrayList<>(PageForm.on(page, seen.body()));
        Collections.shuffle(forms, chance);
        FormFiller filler =
                new FormFiller(LocalDate.ofInstant(clock.instant(), ZoneId.of("America/Chicago")), passphrase);
        forms.stream()
                .filter(form -> sends.matcher(form.action()).matches())
                .limit(SENT_A_PAGE)
                .forEach(form -> {
                    long asked = System.nanoTime();
                    Map<String, String> fields = filler.filled(form);
                    // the token of the sign-in that runs now, which post() adds
                    fields.remove("csrf");
                    Answer answer = browser.post(form.action(), fields);
                    tally.answered("POST", form.action(), answer.status(), (System.nanoTime() - asked) / 1e6);
                });
    }
}
