package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import warmshelf.words.Choice;
import warmshelf.words.Counted;

/** What a shelf of a new rack is said to hold, one answer a shelf: mats, places under a light, or nothing. */
record ShelfContent(String word, int mats, boolean lit) {
    /** More mats than that lie on no shelf that people lift trays from. */
    private static final int MOST_MATS = 4;

    static final ShelfContent NOTHING = new ShelfContent("nothing", 0, false);
    static final ShelfContent LIT = new ShelfContent("light", 0, true);

    static ShelfContent mats(int mats) {
        return new ShelfContent("mats-" + mats, mats, false);
    }

    /** All there are, as a form offers them. */
    static List<ShelfContent> all() {
        List<ShelfContent> all = new ArrayList<>();
        for (int mats = 1; mats <= MOST_MATS; mats++) {
            all.add(mats(mats));
        }
        all.add(LIT);
        all.add(NOTHING);
        return all;
    }

    static ShelfContent named(String word) {
        return all().stream().filter(each -> each.word.equals(word)).findFirst().orElse(NOTHING);
    }

    /** What comes nearest to a shelf that stands. */
    static ShelfContent of(Shelf shelf) {
        if (!shelf.mats().isEmpty()) {
            return mats(Math.min(MOST_MATS, shelf.mats().size()));
        }
        return shelf.isLit() ? LIT : NOTHING;
    }

    Choice choice() {
        return new Choice(
                word,
                mats > 0 ? Counted.of(mats, SAY.heatMat(), SAY.heatMats()) : lit ? SAY.aLight() : SAY.nothingYet());
    }
}
