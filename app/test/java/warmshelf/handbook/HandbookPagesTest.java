package warmshelf.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import warmshelf.db.DescribedTable;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HandbookPagesTest {
    private static final Pattern MAIN = Pattern.compile("<main.*</main>", Pattern.DOTALL);
    private static final Pattern ADDRESS = Pattern.compile("href=\"(/[^\"#]*)(?:#([^\"]*))?\"");

    private TestGroup group;
    private Browser coordinator;

    @BeforeAll
    void open() {
        group = TestGroup.open();
        coordinator = group.signedIn(group.coordinator());
    }

    @AfterAll
    void close() {
        group.close();
    }

    @Test
    void coordinators_find_every_page_of_it_from_any_page() {
        assertThat(coordinator.get("/today").body()).contains("href=\"/handbook\"");
        assertThat(group.signedIn(group.member()).get("/today").body()).doesNotContain("/handbook");
        String list = coordinator.get("/handbook").body();

        for (Chapter chapter : Chapter.values()) {
            assertThat(list).contains("href=\"/handbook/" + chapter.word() + "\"");
        }
    }

    @ParameterizedTest
    @EnumSource(Chapter.class)
    void each_page_answers_and_each_of_its_links_leads_somewhere(Chapter chapter) {
        Answer page = coordinator.get("/handbook/" + chapter.word());

        assertThat(page.status()).isEqualTo(200);
        assertThat(page.text()).contains(chapter.title());
        String main =
                MAIN.matcher(page.body()).results().findFirst().orElseThrow().group();
        assertThat(ADDRESS.matcher(main).results().map(MatchResult::group).distinct())
                .allSatisfy(link -> {
                    MatchResult parts =
                            ADDRESS.matcher(link).results().findFirst().orElseThrow();
                    Answer there = coordinator.get(parts.group(1));
                    assertThat(there.status()).as(link).isIn(200, 303);
                    if (parts.group(2) != null) {
                        assertThat(there.body()).as(link).contains("id=\"" + parts.group(2) + "\"");
                    }
                });
    }

    @Test
    void the_page_of_the_data_shows_each_table_and_column_with_its_words() {
        String page = plain(coordinator.get("/handbook/data").text());

        for (DescribedTable table : DescribedTable.all()) {
            assertThat(page).contains(plain(table.name() + " " + table.about()));
            table.columns().forEach(column -> assertThat(page).contains(plain(column.name() + " " + column.about())));
        }
    }

    @Test
    void a_page_that_is_not_there_is_said_so() {
        Answer answer = coordinator.get("/handbook/nonsense");

        assertThat(answer.status()).isEqualTo(404);
        assertThat(answer.text()).contains("The handbook has no page of this name.");
    }

    private static String plain(String words) {
        return words.replaceAll("\\s+", " ").strip();
    }
}
