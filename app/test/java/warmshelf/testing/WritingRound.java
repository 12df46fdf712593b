package warmshelf.testing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Goes over all pages, keeps the forms that stand there, and sends one of each address, trying several where the first is
 * refused. What was written makes more forms appear (a thing made can be taken out again), so it may go round again.
 */
public final class WritingRound {
    private static final int EACH_KIND = 2;
    private static final int TRIES = 4;

    private final EveryWrite writes;
    private final FormFiller filler;
    private final byte[] photo;
    private final Set<String> leftAlone;
    private final Map<String, List<Found>> found = new TreeMap<>();
    private final Set<String> written = new TreeSet<>();
    private final List<String> faults = new ArrayList<>();

    private record Found(Browser browser, PageForm form) {}

    /** @param leftAlone addresses that are not written to */
    public WritingRound(EveryWrite writes, FormFiller filler, byte[] photo, Set<String> leftAlone) {
        this.writes = writes;
        this.filler = filler;
        this.photo = photo.clone();
        this.leftAlone = leftAlone;
    }

    /** Goes round as whoever is signed in on the browser, and sends what nothing has been sent to yet. */
    public void go(Browser browser) {
        PageWalk walk = PageWalk.from(browser, EACH_KIND, PageWalk.EVERYWHERE);
        walk.failed().forEach((page, status) -> {
            if (status >= 500) {
                faults.add(status + " GET " + page);
            }
        });
        writes.sorted(walk.forms()).forEach((address, forms) -> {
            List<Found> known = found.computeIfAbsent(address, first -> new ArrayList<>());
            // the newest first: what was there before may be settled by now
            forms.stream().limit(TRIES).forEach(form -> known.add(0, new Found(browser, form)));
        });
        send();
    }

    /** Sends once more to every address of which a form is known, without looking for others. */
    public void again() {
        written.clear();
        send();
    }

    private void send() {
        // what concerns one thing before what settles all, so that there is still something to do for the former
        List<String> addresses = new ArrayList<>(found.keySet());
        addresses.sort(Comparator.comparingInt(EveryWrite::parts).reversed().thenComparing(address -> address));
        addresses.removeAll(leftAlone);
        for (String address : addresses) {
            found.getOrDefault(address, List.of()).stream()
                    .limit(TRIES)
                    .forEach(each -> sendAsItStandsNow(address, each));
        }
    }

    /** What was written since may have changed the form, or taken it away. */
    private void sendAsItStandsNow(String address, Found each) {
        if (!written.contains(address)) {
            String page = each.form().page();
            PageForm.on(page, each.browser().get(page).body()).stream()
                    .filter(now -> writes.sorted(List.of(now)).containsKey(address))
                    .findFirst()
                    .ifPresent(now -> send(each.browser(), address, now));
        }
    }

    private void send(Browser browser, String address, PageForm form) {
        Map<String, String> fields = filler.filled(form);
        Answer answer = form.uploads() ? upload(browser, form, fields) : browser.post(form.action(), fields);
        if (answer.status() >= 500) {
            faults.add(answer.status() + " POST " + form.action());
        } else if (answer.status() < 400) {
            written.add(address);
        }
    }

    private Answer upload(Browser browser, PageForm form, Map<String, String> fields) {
        Upload upload = new Upload();
        Map<String, String> typed = new HashMap<>(fields);
        typed.remove("csrf");
        typed.forEach(upload::field);
        return upload.file("trial.jpg", photo).post(browser, form.action());
    }

    /** The addresses that took something. */
    public Set<String> written() {
        return new TreeSet<>(written);
    }

    /** What was answered as a fault of the program, which nothing sent by a form may be. */
    public List<String> faults() {
        return faults;
    }
}
