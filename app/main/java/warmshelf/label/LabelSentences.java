package warmshelf.label;

import warmshelf.words.Sentences;

/** What this room tells people, sentence by sentence; the words stand in the room's file. */
interface LabelSentences {
    LabelSentences SAY = Sentences.of(LabelSentences.class);

    String codeUnknown(String code);

    String codeEmpty();

    String signUnknown(String code, char sign);

    String codeLength(String code, int signs);

    String codeCannotBe(String code);

    String racksAndMats();

    String sowingsUnderWay();

    String mySowings();

    String rack(String rack);

    String mat(String mat);

    String shelf(String site, String rack, int shelf);
}
