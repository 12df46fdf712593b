package warmshelf.guide;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import warmshelf.crop.Crop;
import warmshelf.crop.CropHazard;
import warmshelf.crop.Handled;

/**
 * How one step is done.
 *
 * @param lead the step in a sentence or two
 * @param body the address of the steps and tables, for a page to take in
 * @param hazards what can hurt someone at it; may be empty
 * @param related what to read beside it
 * @param ofCrop whether it speaks of one crop
 */
public record Article(String lead, String body, List<Hazard> hazards, List<Topic> related, boolean ofCrop) {
    public Article {
        hazards = List.copyOf(hazards);
        related = List.copyOf(related);
    }

    static Article of(Topic topic, Advice advice) {
        String file = topic.file();
        return new Article(
                advice.say(file, "lead"),
                Advice.address(file, "body"),
                Advice.list(file, "cautions").stream().map(Hazard::named).toList(),
                Advice.list(file, "read beside").stream().map(Topic::named).toList(),
                false);
    }

    /** The hazards of which a line stands before the steps. */
    public List<Hazard> before() {
        return hazards.stream().filter(this::standsBefore).toList();
    }

    /** The hazards that need no line before the steps. */
    public List<Hazard> besides() {
        return hazards.stream().filter(hazard -> !standsBefore(hazard)).toList();
    }

    private boolean standsBefore(Hazard hazard) {
        return !hazard.brief().isEmpty() && (ofCrop || !hazard.isNamedOnly());
    }

    /**
     * The same, with what of a crop can hurt someone before the rest, and without what only other crops do.
     *
     * @param handled what of the crop is handled at it
     */
    Article of(Crop crop, Set<Handled> handled) {
        Set<Hazard> all = new LinkedHashSet<>();
        Arrays.stream(CropHazard.values())
                .filter(crop.hazards()::contains)
                .filter(hazard -> hazard.isMetIn(handled))
                .forEach(hazard -> all.add(Hazard.of(hazard)));
        hazards.stream().filter(hazard -> !hazard.isOfSomeCrops()).forEach(all::add);
        return new Article(lead, body, List.copyOf(all), related, true);
    }
}
