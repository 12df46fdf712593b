package warmshelf.testing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Follows every link from some pages on, a few of each kind, and keeps the forms that it finds. */
public final class PageWalk {
    /** Pages from which links lead to all others, and a page that only a filled-in form leads to. */
    public static final List<String> EVERYWHERE = List.of(
            "/today",
            "/today?show=all",
            "/ask/plan?crop=pepper&lot=&variety=Long+red&seedYear=2027&source=packet&storage=unknown&plants=6&method=cells"
                    + "&heat=warm&after=light&container=half-tray&where=outdoors&cellsInATray=72&risk=",
            "/requests",
            "/racks",
            "/weeks",
            "/sites",
            "/seeds",
            "/people",
            "/frost",
            "/duty",
            "/settings",
            "/settings/group",
            "/archive",
            "/server",
            "/plans",
            "/supplies",
            "/findings",
            "/files",
            "/harvest",
            "/surplus",
            "/reminders",
            "/labels?again=yes",
            "/labels?of=places",
            "/labels/sizes",
            "/labels/printers",
            "/tokens",
            "/tablets",
            "/settings/passkeys",
            "/paper");

    private static final Pattern PACKED = Pattern.compile("zip|pdf|image/|font/");
    private static final Pattern LINK = Pattern.compile("href=\"(/[^\"#]*)");
    private static final Pattern ID = Pattern.compile("[0-9a-f]{8}-[0-9a-f-]{27}|[0-9a-f]{64}");
    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d\\d-\\d\\d");

    private final Browser browser;
    private final int eachKind;
    private final Map<String, Integer> seenOfKind = new HashMap<>();
    private final List<PageForm> forms = new ArrayList<>();
    private final Map<String, Integer> failed = new HashMap<>();
    private final List<String> words;
    private final Map<String, List<String>> said = new TreeMap<>();

    private PageWalk(Browser browser, int eachKind, List<String> words) {
        this.browser = browser;
        this.eachKind = eachKind;
        this.words = words;
    }

    /**
     * Walks as whoever is signed in on the browser.
     *
     * @param eachKind of the pages that differ only by what they are about, this many are looked at
     */
    public static PageWalk from(Browser browser, int eachKind, List<String> starts) {
        return inSearchOf(browser, eachKind, starts, List.of());
    }

    /** The same, noting on which pages and in which files one of some words stands. */
    public static PageWalk inSearchOf(Browser browser, int eachKind, List<String> starts, List<String> words) {
        PageWalk walk = new PageWalk(browser, eachKind, words);
        walk.follow(starts);
        return walk;
    }

    private void follow(List<String> starts) {
        Deque<String> toSee = new ArrayDeque<>(starts);
        Set<String> met = new HashSet<>(starts);
        while (!toSee.isEmpty()) {
            String path = toSee.removeFirst();
            if (path.startsWith("/static") || seenOfKind.merge(kind(path), 1, Integer::sum) > eachKind) {
                continue;
            }
            Answer answer = browser.get(path);
            if (answer.status() >= 400) {
                failed.put(path, answer.status());
                continue;
            }
            List<String> found = isPacked(answer)
                    ? List.of()
                    : words.stream()
                            .filter(word -> answer.body().contains(word))
                            .toList();
            if (!found.isEmpty()) {
                said.put(path, found);
            }
            forms.addAll(PageForm.on(path, answer.body()));
            List<String> next = new ArrayList<>();
            PageForm.asking(path, answer.body()).forEach(form -> next.add(form.asked()));
            LINK.matcher(answer.body())
                    .results()
                    .forEach(link -> next.add(link.group(1).replace("&amp;", "&")));
            next.stream().filter(met::add).forEach(toSee::addLast);
        }
    }

    /** In what is packed, three letters of a name stand by chance. */
    private static boolean isPacked(Answer answer) {
        return PACKED.matcher(answer.header("Content-Type")).find();
    }

    /** An address without what tells one thing from another of its kind. */
    public static String kind(String path) {
        String bare = path.replaceAll("\\?.*", "");
        return DAY.matcher(ID.matcher(bare).replaceAll("*")).replaceAll("#");
    }

    public List<PageForm> forms() {
        return forms;
    }

    /** The words that were searched for, by the page or file that says them. */
    public Map<String, List<String>> said() {
        return said;
    }

    /** How many pages and files were looked at. */
    public int seen() {
        return seenOfKind.size();
    }

    /** The pages that did not answer as they should, with their status. */
    public Map<String, Integer> failed() {
        return failed;
    }
}
