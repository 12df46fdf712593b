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
 * Goes over all pages and sends the forms that stand there, until one of each address was taken or several were refused. What
 * was written makes more forms appear (a thing made can be taken out again), so it goes round a few times.
 */
public final class WritingRound {
    private static final int EACH_KIND = 2;
    private static final int TRIES = 5;

    private final EveryWrite writes;
    private final FormFiller filler;
    private final byte[] photo;
    private final Set<String> leftAlone;
    private final Set<String> written = new TreeSet<>();
    private final Map<String, String> refused = new TreeMap<>();
    private final List<String> faults = new ArrayList<>();

    /** @param leftAlone addresses that are not written to */
    public WritingRound(EveryWrite writes, FormFiller filler, byte[] photo, Set<String> leftAlone) {
        this.writes = writes;
        this.filler = filler;
        this.photo = photo.clone();
        this.leftAlone = leftAlone;
    }

    /** Goes round once as whoever is signed in on the browser. */
    public void go(Browser browser) {
        PageWalk walk = PageWalk.from(browser, EACH_KIND, PageWalk.EVERYWHERE);
        walk.failed().forEach((page, status) -> {
            if (status >= 500) {
                faults.add(status + " GET " + page);
            }
        });
        // what concerns one thing before what settles all, so that there is still something to do for the former
        List<String> addresses = new ArrayList<>(writes.sorted(walk.forms()).keySet());
        addresses.sort(Comparator.comparingInt(EveryWrite::parts).reversed().thenComparing(address -> address));
        addresses.removeAll(leftAlone);
        Map<String, List<PageForm>> forms = writes.sorted(walk.forms());
        for (String address : addresses) {
            forms.getOrDefault(address, List.of()).stream()
                    .limit(TRIES)
                    .forEach(form -> sendAsItStandsNow(browser, address, form));
        }
    }

    /** What was written since the walk may have changed the form, or taken it away. */
    private void sendAsItStandsNow(Browser browser, String address, PageForm form) {
        if (!written.contains(address)) {
            PageForm.on(form.page(), browser.get(form.page()).body()).stream()
                    .filter(now -> now.action().equals(form.action())
                            && now.fields().keySet().equals(form.fields().keySet()))
                    .findFirst()
                    .ifPresent(now -> send(browser, address, now));
        }
    }

    private void send(Browser browser, String address, PageForm form) {
        Map<String, String> fields = filler.filled(form);
        Answer answer = form.uploads() ? upload(browser, form, fields) : browser.post(form.action(), fields);
        if (answer.status() >= 500) {
            faults.add(answer.status() + " POST " + form.action());
        } else if (answer.status() >= 400) {
            refused.put(address, answer.status() + " " + new TreeMap<>(fields));
        } else {
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
        return written;
    }

    /** Why the last try at each of the others was refused. */
    public Map<String, String> refused() {
        Map<String, String> still = new TreeMap<>(refused);
        still.keySet().removeAll(written);
        return still;
    }

    /** What was answered as a fault of the program, which nothing sent by a form may be. */
    public List<String> faults() {
        return faults;
    }
}
