package warmshelf.label;

import static warmshelf.label.LabelSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.label.paper.LabelPart;
import warmshelf.label.paper.TellingForms;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.TrialPart;
import warmshelf.timeline.Seen;
import warmshelf.words.DayWords;

/**
 * What the label of a sowing can say, each part from its full words to the fewest that still tell it apart in this group.
 *
 * @param varieties of all that is under way, by which a variety is told from others
 */
record LabelWording(Collection<String> varieties) {

    /**
     * The parts of a sowing's label.
     *
     * @param seedYear of its lot; null: not known
     * @param plannedFor the day on which it is to be sown; null: none is settled
     */
    List<LabelPart> of(
            Sowing sowing,
            Seen seen,
            LabelPurpose purpose,
            @Nullable Integer seedYear,
            @Nullable LocalDate plannedFor) {
        List<LabelPart> parts = new ArrayList<>();
        String crop = sowing.crop().name();
        if (sowing.variety().isEmpty()) {
            parts.add(new LabelPart(LabelPart.Kind.VARIETY, TellingForms.crop(crop)));
        } else {
            parts.add(new LabelPart(LabelPart.Kind.VARIETY, TellingForms.forms(sowing.variety(), crop, varieties)));
            parts.add(new LabelPart(LabelPart.Kind.CROP, TellingForms.crop(crop)));
        }
        TrialPart trial = sowing.trial();
        if (trial != null) {
            parts.add(new LabelPart(LabelPart.Kind.TRIAL, List.of(trial.words(), trial.number() + trial.way())));
        }
        if (sowing.treatedSeed()) {
            parts.add(new LabelPart(LabelPart.Kind.TREATED, List.of(SAY.treatedSeed(), SAY.treated())));
        }
        parts.add(new LabelPart(
                LabelPart.Kind.GROWER, TellingForms.person(sowing.grower().name())));
        date(seen, purpose, plannedFor).ifPresent(parts::add);
        if (seedYear != null) {
            parts.add(new LabelPart(LabelPart.Kind.LOT, List.of(SAY.lot(String.valueOf(seedYear)))));
        }
        return parts;
    }

    private static Optional<LabelPart> date(Seen seen, LabelPurpose purpose, @Nullable LocalDate plannedFor) {
        if (purpose == LabelPurpose.POT && seen.pottedOn() != null) {
            return Optional.of(date(SAY.potted(), seen.pottedOn()));
        }
        if (seen.sown() != null) {
            return Optional.of(date(SAY.sown(), seen.sown()));
        }
        return Optional.ofNullable(plannedFor).map(day -> date(SAY.toSow(), day));
    }

    private static LabelPart date(String what, LocalDate day) {
        String full = DayWords.dateAndYear(day);
        return new LabelPart(LabelPart.Kind.DATE, List.of(what + " " + full, full, DayWords.date(day)));
    }

    /** The parts of a place's label. */
    static List<LabelPart> ofPlace(String title, String where) {
        return List.of(
                new LabelPart(LabelPart.Kind.VARIETY, TellingForms.forms(title, "", List.of())),
                new LabelPart(LabelPart.Kind.CROP, List.of(where)));
    }
}
