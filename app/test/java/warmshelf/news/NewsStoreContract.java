package warmshelf.news;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.NEWS;
import static warmshelf.testing.Decided.done;

import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStores;
import warmshelf.surplus.SurplusStore;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.SeenSowings;
import warmshelf.testing.StoreContract;

/** What is new for Tom, who grows peppers, and for Priya, on every database. */
abstract class NewsStoreContract extends StoreContract {
    private static final SurplusStore.Moment NOW = new SurplusStore.Moment(SeenSowings.FIRST.plusDays(15), 2027);

    private GrowRoom room;
    private UUID peppers;
    private SowingStores stores;
    private NewsBookStore book;
    private NewsReadStore news;

    @BeforeEach
    void raise() {
        room = new GrowRoom(database(), audit());
        SeenSowings seen = new SeenSowings(database(), audit(), room);
        stores = SowingStores.over(database(), audit(), FrostSource.bundledOnly());
        peppers = seen.upOnDay(9, seen.lot());
        book = new NewsBookStore(audit());
        news = new NewsReadStore(database(), audit(), new NewsReadStore.Names() {
            @Override
            public Map<UUID, String> titles(Collection<UUID> sowings) {
                return stores.sowings().all(sowings).stream().collect(Collectors.toMap(Sowing::id, Sowing::title));
            }

            @Override
            public String problem(String word) {
                return word;
            }
        });
        database().sql().deleteFrom(NEWS).execute();
    }

    private void happens(NewsKind kind, UUID by) {
        clock.advance(Duration.ofMinutes(1));
        book.tellGrower(database().sql(), NewsEvent.ofSowing(kind, peppers, by));
    }

    private void decided(NewsKind kind) {
        clock.advance(Duration.ofMinutes(1));
        book.tellDecision(database().sql(), NewsEvent.ofSowing(kind, peppers, room.priya()));
    }

    private List<NewsKind> kinds(UUID member) {
        return news.lines(member).stream().map(NewsLine::kind).toList();
    }

    @Test
    void the_grower_is_told_and_nobody_else() {
        happens(NewsKind.MOVED, room.priya());

        assertThat(news.lines(room.tom())).singleElement().satisfies(line -> {
            assertThat(line.words())
                    .isEqualTo("Moved: "
                            + stores.sowings().find(peppers).orElseThrow().title());
            assertThat(line.by()).isEqualTo("Priya");
            assertThat(line.address()).isEqualTo("/sowings/" + peppers);
        });
        assertThat(news.lines(room.priya())).isEmpty();
    }

    @Test
    void nobody_is_told_what_they_did_themselves() {
        happens(NewsKind.MOVED, room.tom());

        assertThat(news.count(room.tom())).isZero();
    }

    @Test
    void several_of_one_kind_on_one_sowing_are_one_line_and_the_newest_comes_first() {
        happens(NewsKind.PHOTO, room.priya());
        happens(NewsKind.MOVED, room.priya());
        happens(NewsKind.PHOTO, room.priya());

        assertThat(kinds(room.tom())).containsExactly(NewsKind.PHOTO, NewsKind.MOVED);
        assertThat(news.lines(room.tom()).get(0).words()).startsWith("2 new photos: ");
        assertThat(news.count(room.tom())).isEqualTo(2);
    }

    @Test
    void opening_the_page_that_shows_it_ends_it_and_no_other_page_does() {
        happens(NewsKind.MOVED, room.priya());

        news.see(room.tom(), "/sowings");
        news.see(room.priya(), "/sowings/" + peppers);
        assertThat(news.count(room.tom())).isEqualTo(1);

        news.see(room.tom(), "/sowings/" + peppers);
        assertThat(news.count(room.tom())).isZero();
    }

    @Test
    void all_seen_leaves_what_came_after_the_list_was_made() {
        happens(NewsKind.MOVED, room.priya());
        var until = news.lines(room.tom()).get(0).at();
        happens(NewsKind.PHOTO, room.priya());

        news.seeAll(room.tom(), until);

        assertThat(kinds(room.tom())).containsExactly(NewsKind.PHOTO);
    }

    @Test
    void a_decision_takes_the_place_of_the_one_before() {
        decided(NewsKind.REFUSED);
        decided(NewsKind.PLACED);
        assertThat(kinds(room.tom())).containsExactly(NewsKind.PLACED);

        news.see(room.tom(), "/sowings/" + peppers);
        decided(NewsKind.WAITING);
        assertThat(kinds(room.tom())).containsExactly(NewsKind.WAITING);
    }

    @Test
    void seedlings_are_news_to_all_others_while_some_are_free() {
        SurplusStore surplus = new SurplusStore(stores);
        done(surplus.offer(peppers, 2, NOW, room.tom()));
        assertThat(kinds(room.priya())).containsExactly(NewsKind.SEEDLINGS);
        assertThat(kinds(room.tom())).isEmpty();

        done(surplus.take(peppers, 2, NOW, room.priya()));

        assertThat(kinds(room.priya())).isEmpty();
        assertThat(kinds(room.tom())).containsExactly(NewsKind.SEEDLINGS_TAKEN);
    }

    @Test
    void fewer_seedlings_than_before_are_no_news() {
        SurplusStore surplus = new SurplusStore(stores);
        done(surplus.offer(peppers, 2, NOW, room.tom()));
        news.see(room.priya(), "/surplus");

        done(surplus.offer(peppers, 1, NOW, room.tom()));

        assertThat(kinds(room.priya())).isEmpty();
    }

    @Test
    void what_is_ninety_days_old_goes_when_the_next_is_told() {
        happens(NewsKind.MOVED, room.priya());
        clock.advance(Duration.ofDays(91));
        happens(NewsKind.PHOTO, room.priya());

        assertThat(kinds(room.tom())).containsExactly(NewsKind.PHOTO);
    }
}
