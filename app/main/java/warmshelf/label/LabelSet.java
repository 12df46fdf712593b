package warmshelf.label;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import warmshelf.label.paper.LabelDrawing;
import warmshelf.label.paper.LabelLayout;
import warmshelf.label.paper.LabelPart;
import warmshelf.label.paper.LabelStock;
import warmshelf.label.paper.LabelText;
import warmshelf.label.paper.Lettering;

/**
 * Labels made for a stock, with what had to be done to make them fit. A page tells it before anything is printed, and what cannot
 * be made here is not printed either.
 *
 * @param drawings each label in its order, copies included
 * @param leftOut for what some of them had no room
 * @param withoutQr how many have no QR code, because it could not be read
 * @param unwritable texts in letters for which there is no font, so that their labels go without them
 */
record LabelSet(List<LabelDrawing> drawings, Set<LabelPart.Kind> leftOut, long withoutQr, Set<String> unwritable) {

    /** Something with its code. */
    record Coded(LabelItem item, ShortCode code) {}

    /**
     * Makes the labels.
     *
     * @param base the group's address, with which that of each code begins
     * @return empty where the labels are too small even for a code
     */
    static Optional<LabelSet> of(LabelStock stock, List<Coded> items, String base) {
        LabelLayout layout = new LabelLayout(stock, Lettering.bundled());
        List<LabelDrawing> drawings = new ArrayList<>();
        Set<LabelPart.Kind> leftOut = EnumSet.noneOf(LabelPart.Kind.class);
        Set<String> unwritable = new LinkedHashSet<>();
        long withoutQr = 0;
        if (!hasRoomForCodes(layout, base)) {
            return Optional.empty();
        }
        for (Coded each : items) {
            List<LabelPart> writable = writable(each.item().parts(), unwritable);
            Optional<LabelDrawing> drawn =
                    layout.of(new LabelText(each.code().spaced(), CodeAddress.of(base, each.code()), writable));
            if (drawn.isEmpty()) {
                return Optional.empty();
            }
            leftOut.addAll(drawn.get().leftOut());
            withoutQr += drawn.get().qr() == null ? each.item().copies() : 0;
            for (int copy = 0; copy < each.item().copies(); copy++) {
                drawings.add(drawn.get());
            }
        }
        return Optional.of(new LabelSet(drawings, leftOut, withoutQr, unwritable));
    }

    /** Judged by the widest code, so that what a page offers before codes are given can be printed. */
    private static boolean hasRoomForCodes(LabelLayout layout, String base) {
        return layout.of(new LabelText(ShortCode.WIDEST.spaced(), CodeAddress.of(base, ShortCode.WIDEST), List.of()))
                .isPresent();
    }

    private static List<LabelPart> writable(List<LabelPart> parts, Set<String> unwritable) {
        List<LabelPart> writable = new ArrayList<>();
        for (LabelPart part : parts) {
            List<String> forms =
                    part.forms().stream().filter(Lettering.bundled()::canWrite).toList();
            if (forms.size() < part.forms().size()) {
                unwritable.add(part.forms().get(0));
            }
            if (!forms.isEmpty()) {
                writable.add(new LabelPart(part.kind(), forms));
            }
        }
        return writable;
    }
}
