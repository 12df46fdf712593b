package warmshelf.exchange;

import java.util.List;

/** What becomes of a row. */
sealed interface RowJudgement {
    /** It is taken in, or would be: in a few words what it is. */
    record Good(String words) implements RowJudgement {}

    /** It is left out, because the same is there already or it is not asked for. */
    record LeftOut(String why) implements RowJudgement {}

    /** It cannot be taken in, and so nothing of the file can. */
    record Wrong(List<RowTrouble> troubles) implements RowJudgement {}
}
