package warmshelf.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.Person;
import warmshelf.testing.TestGroup;

class PeoplePagesTest {
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

    @Test
    void members_see_first_names_and_nothing_to_press() {
        Answer page = group.signedIn(group.member()).get("/people");

        assertThat(page.text())
                .contains("Members: 3 Ilse Coordinator Priya Tom Okafor")
                .doesNotContain("Brandt", "Nair");
        assertThat(page.body()).doesNotContain("/people/");
        assertThat(ilse.get("/people").text()).contains("Ilse Brandt Coordinator", "Priya Nair");
    }

    @Test
    void many_members_come_page_by_page_and_by_part_of_a_name() {
        MemberStore members = new MemberStore(group.database(), group.audit());
        for (int each = 0; each < 50; each++) {
            members.add(
                    group.database().sql(),
                    new NewMember("Zoë%02d Far".formatted(each), "US", "55803", "none"),
                    false,
                    "for a test");
        }

        assertThat(ilse.get("/people").text())
                .contains("Page 1 of 2", "Zoë46 Far")
                .doesNotContain("Zoë47 Far");
        assertThat(ilse.get("/people?page=2").text()).contains("Zoë49 Far").doesNotContain("Zoë46 Far");
        assertThat(ilse.get("/people?name=ZOE4").text()).contains("Members: 10", "Zoë49 Far");
        assertThat(ilse.get("/people?name=%25").text()).contains("Nobody here is called “%”");
        assertThat(ilse.get("/people?page=many").status()).isEqualTo(422);
    }

    @Test
    void an_invitation_is_shown_once_and_lets_one_person_join() {
        Answer made = ilse.post("/people/links", Map.of("note", "Nadia next door", "role", "member"));
        Answer page = ilse.get(made.location());
        Answer later = ilse.get("/people");

        String path = linkOn(page);
        assertThat(made.status()).isEqualTo(303);
        assertThat(group.stranger().get(path).status()).isEqualTo(200);
        assertThat(later.body()).doesNotContain(path);
        assertThat(later.text()).contains("Nadia next door");
    }

    @Test
    void a_link_opens_with_the_name_it_was_made_for_and_people_say_so_when_another_joins() {
        String anas = linkOn(ilse.get(ilse.post("/people/links", Map.of("note", "Ana", "role", "member"))
                .location()));
        String noras = linkOn(ilse.get(ilse.post("/people/links", Map.of("note", "Nora", "role", "member"))
                .location()));
        assertThat(group.stranger().get(anas).typed("name")).isEqualTo("Ana");

        assertThat(join(anas, "Bea").status()).isEqualTo(303);
        assertThat(join(noras, "nora").status()).isEqualTo(303);

        assertThat(ilse.get("/people").text())
                .contains("Bea (the link was made for Ana, joined as Bea)")
                .doesNotContain("made for Nora");
        assertThat(group.signedIn(group.member()).get("/people").text()).doesNotContain("made for Ana");
    }

    private Answer join(String path, String name) {
        return group.stranger()
                .post(
                        path,
                        Map.of(
                                "name",
                                name,
                                "country",
                                "US",
                                "postcode",
                                "55804",
                                "passphrase",
                                "four plain words here"));
    }

    @Test
    void people_say_that_other_devices_cannot_open_the_links_and_where_to_set_the_address() {
        Answer page = ilse.get("/people");

        assertThat(page.text())
                .contains("Links made here do not open on other devices.", "They begin with http://127.0.0.1:")
                .contains("--base-url https://seeds.example.org", "WARMSHELF_BASE_URL");
        assertThat(group.signedIn(group.member()).get("/people").text()).doesNotContain("--base-url");
    }

    @Test
    void an_invitation_without_a_name_or_with_an_unknown_role_is_refused_and_the_rest_kept() {
        Answer nameless = ilse.post("/people/links", Map.of("note", "", "role", "member"));
        Answer king = ilse.post("/people/links", Map.of("note", "Nadia", "role", "king"));

        assertThat(nameless.status()).isEqualTo(422);
        assertThat(nameless.text()).contains("For whom is empty");
        assertThat(king.status()).isEqualTo(422);
        assertThat(king.text()).contains("Joins as was 'king'; accepted are: member, coordinator.");
        assertThat(king.typed("note")).isEqualTo("Nadia");
    }

    @Test
    void a_withdrawn_link_lets_nobody_in_and_cannot_be_withdrawn_again() {
        ilse.post("/people/links", Map.of("note", "Nadia", "role", "member"));
        Answer page = ilse.get("/people");
        String withdrawal = first(page, "/people/links/[0-9a-f]{64}/withdrawal");

        Answer once = ilse.post(withdrawal);
        Answer twice = ilse.post(withdrawal);

        assertThat(once.status()).isEqualTo(303);
        assertThat(twice.status()).isEqualTo(410);
        assertThat(group.stranger().get(linkOn(page)).text()).contains("has expired or was withdrawn");
    }

    @Test
    void a_member_made_coordinator_may_invite_at_once_and_no_longer_when_made_a_member_again() {
        Browser tom = group.signedIn(group.member());
        String role = address(group.member(), "role");

        ilse.post(role, Map.of("role", "coordinator"));
        Answer may = tom.post("/people/links", Map.of("note", "x", "role", "member"));
        ilse.post(role, Map.of("role", "member"));
        Answer mayNot = tom.post("/people/links", Map.of("note", "x", "role", "member"));

        assertThat(may.status()).isEqualTo(303);
        assertThat(mayNot.status()).isEqualTo(403);
    }

    @Test
    void the_last_coordinator_can_neither_step_back_nor_leave() {
        Answer stepBack = ilse.post(address(group.coordinator(), "role"), Map.of("role", "member"));
        Answer leave = ilse.post(address(group.coordinator(), "leaving"));

        assertThat(stepBack.status()).isEqualTo(409);
        assertThat(stepBack.text()).contains("Ilse Brandt is the only coordinator");
        assertThat(leave.status()).isEqualTo(409);
        assertThat(ilse.get("/settings/group").status()).isEqualTo(200);
    }

    @Test
    void an_unknown_role_changes_nothing() {
        Answer answer = ilse.post(address(group.member(), "role"), Map.of("role", "king"));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("member or coordinator");
    }

    @Test
    void someone_who_has_left_is_signed_out_and_cannot_sign_in_until_back() {
        Browser tom = group.signedIn(group.member());

        ilse.post(address(group.member(), "leaving"));
        Answer away = tom.get("/people");
        Answer signIn = signIn(group.member());
        ilse.post(address(group.member(), "return"));

        assertThat(away.status()).isEqualTo(303);
        assertThat(signIn.status()).isEqualTo(422);
        assertThat(signIn(group.member()).status()).isEqualTo(303);
    }

    @Test
    void someone_who_has_left_gets_no_sign_in_link_and_no_role() {
        ilse.post(address(group.member(), "leaving"));

        assertThat(ilse.post(address(group.member(), "sign-in-link")).status()).isEqualTo(409);
        assertThat(ilse.post(address(group.member(), "leaving")).status()).isEqualTo(409);
        assertThat(ilse.post(address(group.member(), "role"), Map.of("role", "coordinator"))
                        .status())
                .isEqualTo(409);
    }

    @Test
    void links_made_by_a_coordinator_who_leaves_close() {
        ilse.post(address(group.member(), "role"), Map.of("role", "coordinator"));
        Browser tom = group.signedIn(group.member());
        tom.post("/people/links", Map.of("note", "a friend", "role", "coordinator"));
        String path = linkOn(tom.get("/people"));

        ilse.post(address(group.member(), "leaving"));

        assertThat(group.stranger().get(path).status()).isEqualTo(410);
    }

    @Test
    void a_coordinator_makes_a_sign_in_link_that_works_once() {
        ilse.post(address(group.member(), "sign-in-link"));
        String path = linkOn(ilse.get("/people"));
        Browser tom = group.stranger();

        Answer in = tom.postAsIs(path, Map.of());

        assertThat(in.status()).isEqualTo(303);
        assertThat(tom.get("/settings").typed("name")).isEqualTo("Tom Okafor");
    }

    @Test
    void actions_are_for_coordinators_who_are_signed_in() {
        String leaving = address(group.onDuty(), "leaving");

        assertThat(group.signedIn(group.member()).post(leaving).status()).isEqualTo(403);
        assertThat(group.stranger().post(leaving).status()).isEqualTo(401);
        assertThat(group.stranger().get("/people").location()).isEqualTo("/sign-in?then=%2Fpeople");
    }

    @Test
    void nobody_and_no_identifier_at_all_are_not_found() {
        assertThat(ilse.post("/people/" + new UUID(1, 2) + "/leaving").status()).isEqualTo(404);
        assertThat(ilse.post("/people/tom/leaving").status()).isEqualTo(404);
        assertThat(ilse.post("/people/1-1-1-1-1/leaving").status()).isEqualTo(404);
    }

    private Answer signIn(Person person) {
        return group.stranger().postAsIs("/sign-in", Map.of("name", person.name(), "passphrase", person.passphrase()));
    }

    private static String address(Person person, String action) {
        return "/people/" + person.id() + "/" + action;
    }

    private static String linkOn(Answer page) {
        return first(page, "/(join|in)/[A-Za-z0-9_-]{43}");
    }

    private static String first(Answer page, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(page.body());
        assertThat(found.find()).isTrue();
        return found.group();
    }
}
