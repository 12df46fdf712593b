package warmshelf.timeline;

import java.util.List;

/**
 * How to do one step, in plain words.
 *
 * @param how what to do
 * @param cautions what can hurt someone, and whom to believe before us; may be empty
 * @param source where the figures come from, or 'common practice'
 */
public record StepAdvice(Step step, String how, List<Caution> cautions, String source) {
    public StepAdvice {
        cautions = List.copyOf(cautions);
    }
}
