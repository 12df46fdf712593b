package warmshelf.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PartOfListTest {
    private static final List<Integer> ALL =
            IntStream.rangeClosed(1, 2 * PartOfList.LINES + 1).boxed().toList();

    @Test
    void each_page_goes_on_where_the_one_before_ended() {
        assertThat(PartOfList.of(ALL, 1).lines()).hasSize(PartOfList.LINES).startsWith(1);
        assertThat(PartOfList.of(ALL, 2).lines()).startsWith(PartOfList.LINES + 1);
        assertThat(PartOfList.of(ALL, 3).lines()).containsExactly(2 * PartOfList.LINES + 1);
        assertThat(PartOfList.of(ALL, 3).isLast()).isTrue();
        assertThat(PartOfList.of(ALL, 3).total()).isEqualTo(ALL.size());
    }

    @Test
    void beyond_the_end_stands_the_last_page_and_an_empty_list_has_one() {
        assertThat(PartOfList.of(ALL, 99).page()).isEqualTo(3);
        PartOfList<Integer> none = PartOfList.of(List.of(), 7);
        assertThat(none.pages()).isEqualTo(1);
        assertThat(none.isFirst() && none.isLast()).isTrue();
    }
}
