package warmshelf.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tablets at the racks, made by a coordinator and opened by their link, as people do. */
public final class RackTablet {
    private static final Pattern LINK = Pattern.compile("value=\"http://[^/\"]+(/tablet/[^\"]+)\"");

    private RackTablet() {}

    /** The path of the link by which a new tablet comes in. */
    public static String link(Browser coordinator, String name, String siteId) {
        return linkIn(coordinator.post("/tablets", Map.of("name", name, "site", siteId)));
    }

    /** The path of the link that an answer shows. */
    public static String linkIn(Answer answer) {
        Matcher link = LINK.matcher(answer.body());
        assertThat(link.find()).as(answer.text()).isTrue();
        return link.group(1);
    }

    /** Opens a link and answers with the tablet's browser, which has seen the round. */
    public static Browser opened(Browser fresh, String link) {
        Answer answer = fresh.postAsIs(link, Map.of());
        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
        fresh.get("/today");
        return fresh;
    }

    /** A site of a group, described by its coordinator. */
    public static String site(Browser coordinator, String name) {
        coordinator.post("/sites", Map.of("name", name, "walkOrder", "1", "amps", "15", "volts", "120", "note", ""));
        Matcher site = Pattern.compile("/sites/([0-9a-f-]{36})/racks/new")
                .matcher(coordinator.get("/sites").body());
        assertThat(site.find()).isTrue();
        return site.group(1);
    }
}
