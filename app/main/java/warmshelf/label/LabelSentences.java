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

    String forCoordinators();

    String rack(String rack);

    String mat(String mat);

    String shelf(String site, String rack, int shelf);

    String litShelf(int shelf);

    String underLight(String site, String rack);

    String stockUnknown(String stock);

    String printerUnknown();

    String tooSmall(String measures);

    String withoutQr();

    String leftOut(String what);

    String unwritable(String what);

    String ownAddress(String address);

    String ownAddressToSet(String address);

    String tooMany(int labels, int most);

    String nothingTicked();

    String marked(String what);

    String byHand(String what);

    String undone();

    String runOfAnother(String byName);

    String pdfTitle(String group);

    String screenKept();

    String beyondThePage();

    String nothingToPrintOn();

    String sizeAdded(String size);

    String sizeRemoved();

    String sheetTitle();

    String sheetAcross();

    String sheetDown();

    String sheetActualSize();

    String printerMeasured(String printer);

    String printerRemoved();

    String bags(int number);

    String trays(int number);

    String pots(int number);

    String places(int number);

    String stick();

    String tag();

    String roll();

    String sheet();

    String partVariety();

    String partTrial();

    String partTreated();

    String partGrower();

    String partDate();

    String partCrop();

    String partLot();

    String treatedSeed();

    String treated();

    String potted();

    String sown();

    String toSow();

    String lot(String year);
}
