package warmshelf.label;

import java.util.List;
import warmshelf.label.paper.LabelPart;

/**
 * Something to be labelled.
 *
 * @param copies how many labels alike
 * @param labelled whether it has its label
 * @param parts what its label can say beside the code
 */
record LabelItem(CodeStore.Subject subject, LabelPurpose purpose, int copies, boolean labelled, List<LabelPart> parts) {
    /** What a form calls it. */
    public String key() {
        return purpose.word() + "-" + subject.id();
    }

    LabelItem times(int number) {
        return new LabelItem(subject, purpose, number, labelled, parts);
    }
}
