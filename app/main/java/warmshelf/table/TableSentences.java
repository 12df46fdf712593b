package warmshelf.table;

import warmshelf.words.Sentences;

/** Why a file is no table that can be read; the words stand in the room's file. */
interface TableSentences {
    TableSentences SAY = Sentences.of(TableSentences.class);

    String workbook();

    String noText();

    String holdsNul();

    String damagedText(String encoding);

    String empty();

    String columnMissing(String column, String given, String accepted);

    String columnTwice(String column);

    String overlong(long row, int length, String start);

    String quotesOpen(String line);
}
