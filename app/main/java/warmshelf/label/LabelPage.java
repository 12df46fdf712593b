package warmshelf.label;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import warmshelf.label.paper.LabelPicture;
import warmshelf.words.Choice;
import warmshelf.words.Counted;
import warmshelf.words.FormReader;

/**
 * Labels to print.
 *
 * @param scope what the labels are of, as an address says it
 * @param again whether what has its label is listed too
 * @param items what is to be labelled
 * @param counted the same in words, for example '6 trays and 2 bags'
 * @param wish how they are printed
 * @param picture of the first label; null: there is none, or it is too small
 * @param sample whether the first label has no code yet, and the widest stands for it
 * @param notes what to know of these labels before they are printed
 * @param stocks sizes to choose from
 * @param screen how true this screen is
 * @param open which part is unfolded: 'screen', 'change' or none
 * @param address where the codes lead
 */
record LabelPage(
        FormReader form,
        LabelScope scope,
        boolean again,
        List<LabelItem> items,
        String counted,
        LabelWish wish,
        String stockWords,
        @Nullable LabelPicture picture,
        boolean sample,
        List<String> notes,
        List<Choice> stocks,
        List<Choice> printers,
        List<CodeStore.SiteName> sites,
        ScreenRuler screen,
        String open,
        String address) {

    /** For example '6 trays, 2 bags and 24 pots'. */
    static String counted(List<LabelItem> items) {
        Map<LabelPurpose, Integer> counts = new EnumMap<>(LabelPurpose.class);
        items.forEach(item -> counts.merge(item.purpose(), item.copies(), Integer::sum));
        List<String> words = new ArrayList<>();
        counts.forEach((purpose, number) -> words.add(purpose.counted(number)));
        return Counted.all(words);
    }

    /** How many labels. */
    static int labels(List<LabelItem> items) {
        return items.stream().mapToInt(LabelItem::copies).sum();
    }
}
