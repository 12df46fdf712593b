package warmshelf.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

/** Names pasted as they come out of letters and spreadsheets. */
class InvitesPagesTest {
    private TestGroup group;
    private Browser ilse;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        ilse = group.signedIn(group.coordinator());
    }

    @AfterEach
    void close() {
        group.close();
    }

    private Answer paste(String names) {
        return ilse.post("/people/invites", Map.of("names", names));
    }

    private long openLinks() {
        return new LinkStore(group.database(), group.audit()).open().size();
    }

    @Test
    void each_name_gets_a_link_that_lets_that_person_in() {
        Answer made = paste("Ada Lindqvist\nBen Kowalski\n");

        assertThat(made.status()).isEqualTo(200);
        assertThat(made.text()).contains("2 links are made", "For Ada Lindqvist", "this link lets you into");
        String link = made.text()
                .replaceAll("(?s).*Ada Lindqvist, this link lets you into [^:]+: \\S+?(/join/\\S+) .*", "$1");
        assertThat(group.stranger().get(link).body()).contains("value=\"Ada Lindqvist\"");
        assertThat(ilse.get("/people").text()).contains("Ada Lindqvist", "Ben Kowalski");
    }

    @Test
    void tabs_quotes_empty_lines_and_the_same_name_twice_do_no_harm() {
        Answer made = paste("\"Ada  Lindqvist\"\tada@example.org\t555\n\n\tBen Kowalski\nADA LINDQVIST\r\n   \n");

        assertThat(made.text()).contains("2 links are made", "For Ada Lindqvist", "For Ben Kowalski");
        assertThat(openLinks()).isEqualTo(2);
    }

    @Test
    void whoever_belongs_already_or_has_a_link_gets_none_and_that_is_said() {
        paste("Ada Lindqvist");

        Answer made = paste("tom okafor\nAda Lindqvist\nBen Kowalski");

        assertThat(made.text()).contains("1 link is made", "No link for tom okafor, Ada Lindqvist");
        assertThat(openLinks()).isEqualTo(2);
    }

    @Test
    void a_link_that_nobody_copied_is_withdrawn_and_made_anew() {
        paste("Ada Lindqvist");
        assertThat(paste("Ada Lindqvist").text()).contains("can be withdrawn under People");
        String body = ilse.get("/people").body();
        String withdrawal = body.replaceAll("(?s).*action=\"(/people/links/[^\"]+/withdrawal)\".*", "$1");
        assertThat(ilse.post(withdrawal).status()).isEqualTo(303);

        assertThat(paste("Ada Lindqvist").text()).contains("1 link is made", "For Ada Lindqvist");
    }

    @Test
    void five_hundred_lines_one_too_long_and_none_are_refused_with_all_that_was_typed() {
        String many = IntStream.range(0, 500).mapToObj(n -> "Person " + n).collect(Collectors.joining("\n"));
        assertRefused(many, "Names has 500 of them; at most 100 at a time");
        assertRefused("Ada\n" + "x".repeat(81), "at most 80 letters a line");
        assertRefused(" \n\t\n", "Names is empty");
    }

    private void assertRefused(String names, String said) {
        Answer answer = paste(names);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(said);
        assertThat(answer.body()).contains(names.strip().lines().reduce("", (one, other) -> other));
        assertThat(openLinks()).isZero();
    }

    @Test
    void members_make_no_links() {
        assertThat(group.signedIn(group.member()).get("/people/invites").status())
                .isEqualTo(403);
    }
}
