package warmshelf.search;

import warmshelf.words.Sentences;

/** What a search says of what it finds; the words stand in the room's file. */
interface SearchSentences {
    SearchSentences SAY = Sentences.of(SearchSentences.class);

    String searchField();

    String pageField();

    String hasLeft();

    String coordinator();

    String member();

    String sowing(String member, String stage, String season);

    String onMat(String sowing, String mat);

    String groups();

    String lot(String year, String whose);

    String mat(String name);

    String rack(String name);

    String matOn(String rack, String site);
}
