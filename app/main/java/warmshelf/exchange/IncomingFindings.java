package warmshelf.exchange;

import static warmshelf.exchange.ExchangeSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import warmshelf.BadInput;
import warmshelf.table.TableFile;
import warmshelf.table.TableRow;

/** What was found in a file: how it was read, its rows counted, and the first of each kind. */
public final class IncomingFindings implements TableFile.Visit {
    private static final int MOST_TROUBLES = 200;
    private static final int MOST_SHOWN = 20;

    /** A row in a few words. */
    public record Shown(long row, String words) {}

    /** Is told how far the reading is, and ends it by an exception. */
    interface Watch {
        void at(int permille, int rows);
    }

    private final IncomingKind kind;
    private final IncomingRows rows;
    private final Watch watch;
    private final List<String> remarks = new ArrayList<>();
    private final List<RowTrouble> troubles = new ArrayList<>();
    private final List<Shown> good = new ArrayList<>();
    private final List<Shown> leftOut = new ArrayList<>();
    private List<String> doubts = List.of();
    private int goodRows;
    private int leftOutRows;
    private int wrongRows;

    IncomingFindings(IncomingKind kind, IncomingRows rows, Watch watch) {
        this.kind = kind;
        this.rows = rows;
        this.watch = watch;
    }

    /** Notes how the file is read. */
    void begin(TableFile table) {
        remarks.add(
                table.encoding().isGuessed()
                        ? SAY.readAsGuessed(table.encoding().words(), separator(table))
                        : SAY.readAs(table.encoding().words(), separator(table)));
        if (!table.unknown().isEmpty()) {
            remarks.add(SAY.columnsNotRead(String.join(", ", table.unknown())));
        }
    }

    private static String separator(TableFile table) {
        return switch (table.separator()) {
            case COMMA -> SAY.commas();
            case SEMICOLON -> SAY.semicolons();
            case TAB -> SAY.tabs();
        };
    }

    /** Ends it after the last row. */
    void end(TableFile table) {
        rows.finish();
        if (goodRows + leftOutRows + wrongRows == 0) {
            throw new BadInput(SAY.noRows());
        }
        remarks.addAll(rows.remarks(table.heading()));
        doubts = rows.doubts();
    }

    @Override
    public void row(TableRow row, int permille) {
        count(permille);
        RowJudgement judged = rows.judge(row);
        if (judged instanceof RowJudgement.Good taken) {
            goodRows++;
            show(good, row.number(), taken.words());
        } else if (judged instanceof RowJudgement.LeftOut left) {
            leftOutRows++;
            show(leftOut, row.number(), left.why());
        } else if (judged instanceof RowJudgement.Wrong wrong) {
            wrongRows++;
            wrong.troubles().forEach(this::add);
        }
    }

    @Override
    public void tooManyCells(long number, int cells, int columns) {
        count(0);
        wrongRows++;
        add(new RowTrouble(number, "", SAY.tooManyCells(cells, columns)));
    }

    private void count(int permille) {
        int all = goodRows + leftOutRows + wrongRows;
        if (all >= kind.mostRows()) {
            throw new BadInput(SAY.tooManyRows(kind.mostRows()));
        }
        watch.at(permille, all);
    }

    private void add(RowTrouble trouble) {
        if (troubles.size() < MOST_TROUBLES) {
            troubles.add(trouble);
        }
    }

    private static void show(List<Shown> list, long number, String words) {
        if (list.size() < MOST_SHOWN) {
            list.add(new Shown(number, words));
        }
    }

    /** How it was read, and what else is to be known of the whole, in sentences. */
    public List<String> remarks() {
        return remarks;
    }

    /** What may be a mistake. */
    public List<String> doubts() {
        return doubts;
    }

    public List<RowTrouble> troubles() {
        return troubles;
    }

    /** The first rows that are taken in. */
    public List<Shown> good() {
        return good;
    }

    /** The first rows that are left out. */
    public List<Shown> leftOut() {
        return leftOut;
    }

    public int goodRows() {
        return goodRows;
    }

    public int leftOutRows() {
        return leftOutRows;
    }

    public int wrongRows() {
        return wrongRows;
    }

    List<IncomingRows.MadeLink> links() {
        return rows.links();
    }
}
