package warmshelf.duty;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FairRotaTest {
    /** A Monday. */
    private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

    private static final UUID CELLAR = new UUID(0, 1);
    private static final UUID GREENHOUSE = new UUID(0, 2);
    private static final Set<DayOfWeek> EVERY_DAY = Set.of(DayOfWeek.values());

    @Test
    void the_least_served_comes_first_and_the_name_decides_between_equals() {
        RotaBook book = book(
                Map.of(turn(CELLAR, -7), id("Ada")),
                person("Ada", EVERY_DAY),
                person("Cid", EVERY_DAY),
                person("Ben", EVERY_DAY));

        assertThat(names(FairRota.propose(List.of(turn(CELLAR, 0)), book))).containsExactly("Ben");
    }

    @Test
    void of_equally_served_people_the_one_whose_duty_is_longest_ago_comes_first() {
        RotaBook book = book(
                Map.of(turn(CELLAR, -7), id("Ada"), turn(CELLAR, -9), id("Ben")),
                person("Ada", EVERY_DAY),
                person("Ben", EVERY_DAY));

        assertThat(names(FairRota.propose(List.of(turn(CELLAR, 0)), book))).containsExactly("Ben");
    }

    @Test
    void a_day_is_not_left_empty_because_its_only_person_was_taken_for_another() {
        // Ada is the least served, but Tuesday has nobody else.
        RotaBook book = book(
                Map.of(turn(CELLAR, -7), id("Ben")),
                person("Ada", Set.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY)),
                person("Ben", Set.of(DayOfWeek.MONDAY)));
        List<Turn> sameDay = List.of(turn(CELLAR, 0), turn(CELLAR, 1));

        assertThat(names(FairRota.propose(sameDay, book))).containsExactly("Ben", "Ada");
    }

    @Test
    void a_maximum_matching_of_a_textbook_graph_is_found() {
        // A path of alternating choices, the usual example (from memory) on which taking the first free partner stops
        // at
        // four pairs of five: site k can be looked at by person k-1 or k, the first only by person 0, all on one day.
        List<UUID> sites =
                IntStream.range(0, 5).mapToObj(site -> new UUID(1, site)).toList();
        List<Volunteer> people = new ArrayList<>();
        for (int person = 0; person < 5; person++) {
            Map<UUID, Set<DayOfWeek>> weekdays = new HashMap<>();
            weekdays.put(sites.get(person), EVERY_DAY);
            if (person < 4) {
                weekdays.put(sites.get(person + 1), EVERY_DAY);
            }
            people.add(new Volunteer(id("P" + person), "P" + person, weekdays, List.of()));
        }
        // in the order in which greedy goes wrong: the last site first takes the earlier name
        List<Turn> turns = IntStream.iterate(4, site -> site >= 0, site -> site - 1)
                .mapToObj(site -> new Turn(sites.get(site), MONDAY))
                .toList();

        FairRota.Proposal proposal = FairRota.propose(turns, new RotaBook(people, Map.of(), Set.of()));

        assertThat(proposal.nobody()).isEmpty();
        assertThat(names(proposal)).containsExactly("P4", "P3", "P2", "P1", "P0");
    }

    @Test
    void nobody_looks_two_days_in_a_row_when_someone_else_can() {
        RotaBook book = book(
                Map.of(turn(CELLAR, -3), id("Ben"), turn(CELLAR, -5), id("Ben"), turn(CELLAR, -7), id("Ben")),
                person("Ada", EVERY_DAY),
                person("Ben", EVERY_DAY));

        assertThat(names(FairRota.propose(List.of(turn(CELLAR, 0), turn(CELLAR, 1), turn(CELLAR, 2)), book)))
                .containsExactly("Ada", "Ben", "Ada");
    }

    @Test
    void a_duty_that_stands_on_the_day_before_counts_as_a_day_in_a_row() {
        RotaBook book = book(
                Map.of(turn(GREENHOUSE, -1), id("Ada"), turn(CELLAR, -5), id("Ben"), turn(CELLAR, -7), id("Ben")),
                person("Ada", EVERY_DAY),
                person("Ben", EVERY_DAY));

        assertThat(names(FairRota.propose(List.of(turn(CELLAR, 0)), book))).containsExactly("Ben");
    }

    @Test
    void one_person_looks_at_one_site_a_day_unless_both_sites_say_otherwise() {
        Volunteer ada = person("Ada", EVERY_DAY);
        List<Turn> both = List.of(turn(CELLAR, 0), turn(GREENHOUSE, 0));

        assertThat(FairRota.propose(both, new RotaBook(List.of(ada), Map.of(), Set.of()))
                        .nobody())
                .hasSize(1);
        assertThat(FairRota.propose(both, new RotaBook(List.of(ada), Map.of(), Set.of(CELLAR)))
                        .nobody())
                .hasSize(1);
        assertThat(FairRota.propose(both, new RotaBook(List.of(ada), Map.of(), Set.of(CELLAR, GREENHOUSE)))
                        .nobody())
                .isEmpty();
    }

    @Test
    void days_on_which_somebody_cannot_are_kept_free() {
        Away tuesday = new Away(new UUID(9, 9), MONDAY.plusDays(1), MONDAY.plusDays(1));
        Volunteer ada = new Volunteer(id("Ada"), "Ada", Map.of(CELLAR, EVERY_DAY), List.of(tuesday));
        List<Turn> turns = List.of(turn(CELLAR, 0), turn(CELLAR, 1), turn(CELLAR, 2));

        FairRota.Proposal proposal = FairRota.propose(turns, new RotaBook(List.of(ada), Map.of(), Set.of()));

        assertThat(proposal.nobody()).containsExactly(turn(CELLAR, 1));
    }

    @Test
    void nobody_on_the_rota_leaves_every_day_open() {
        FairRota.Proposal proposal =
                FairRota.propose(List.of(turn(CELLAR, 0)), new RotaBook(List.of(), Map.of(), Set.of()));

        assertThat(proposal.given()).isEmpty();
        assertThat(proposal.nobody()).containsExactly(turn(CELLAR, 0));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void small_rotas_are_as_good_as_the_best_of_all_ways(long seed) {
        Random chance = new Random(seed);
        for (int times = 0; times < 30; times++) {
            Invented invented = Invented.small(chance);

            FairRota.Proposal proposal = FairRota.propose(invented.turns(), invented.book());

            assertThat(scoreOf(proposal, invented)).isEqualTo(Exhaustive.best(invented));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void a_season_breaks_no_rule_fills_what_can_be_filled_and_comes_out_the_same_twice(long seed) {
        Invented invented = Invented.large(new Random(seed));

        FairRota.Proposal proposal = FairRota.propose(invented.turns(), invented.book());

        proposal.given()
                .forEach((turn, who) ->
                        assertThat(invented.book().canTake(who, turn)).isTrue());
        List<Map.Entry<Turn, Volunteer>> given =
                new ArrayList<>(proposal.given().entrySet());
        for (int one = 0; one < given.size(); one++) {
            for (int other = one + 1; other < given.size(); other++) {
                assertThat(given.get(one).getValue().equals(given.get(other).getValue())
                                && invented.book()
                                        .clash(
                                                given.get(one).getKey(),
                                                given.get(other).getKey()))
                        .isFalse();
            }
        }
        assertThat(proposal.nobody()).hasSize(invented.turns().size() - Matching.most(invented));
        assertThat(FairRota.propose(invented.turns(), invented.book())).isEqualTo(proposal);
    }

    private static RotaScore scoreOf(FairRota.Proposal proposal, Invented invented) {
        return Exhaustive.score(
                invented,
                invented.turns().stream()
                        .map(turn -> proposal.given().get(turn))
                        .map(who ->
                                who == null ? -1 : invented.book().volunteers().indexOf(who))
                        .mapToInt(Integer::intValue)
                        .toArray());
    }

    private static List<String> names(FairRota.Proposal proposal) {
        return proposal.given().values().stream().map(Volunteer::name).toList();
    }

    static UUID id(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    private static Volunteer person(String name, Set<DayOfWeek> days) {
        return new Volunteer(id(name), name, Map.of(CELLAR, days, GREENHOUSE, days), List.of());
    }

    private static RotaBook book(Map<Turn, UUID> duties, Volunteer... people) {
        return new RotaBook(Arrays.asList(people), duties, Set.of());
    }

    private static Turn turn(UUID site, int day) {
        return new Turn(site, MONDAY.plusDays(day));
    }
}
