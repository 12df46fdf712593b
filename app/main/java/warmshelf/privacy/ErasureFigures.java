package warmshelf.privacy;

import static warmshelf.privacy.PrivacySentences.SAY;

import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import warmshelf.db.PersonalTrace.Topic;
import warmshelf.leaving.LeavingStore;

/**
 * What would go and what would stay if somebody were erased, counted.
 *
 * @param left what they have that is not over
 * @param goes rows that would be deleted, by what they are about
 * @param stays rows that would stay without a name
 * @param notes texts that would be emptied
 */
record ErasureFigures(LeavingStore.Left left, Map<Topic, Integer> goes, Map<Topic, Integer> stays, int notes) {

    /** What goes, in sentences; nothing is said of what there is none of. */
    public List<String> going() {
        return said(
                line(left.requests(), SAY::requestsGo),
                line(left.turns(), SAY::turnsGo),
                line(goes.getOrDefault(Topic.PROMISES, 0), SAY::promisesGo),
                line(notes, SAY::notesGo),
                line(goes.getOrDefault(Topic.MESSAGES, 0), SAY::messagesGo),
                line(goes.getOrDefault(Topic.DEVICES, 0), SAY::devicesGo),
                line(goes.getOrDefault(Topic.CALENDARS, 0), SAY::calendarsGo),
                line(goes.getOrDefault(Topic.GARDEN, 0), SAY::gardenGoes),
                line(goes.getOrDefault(Topic.WISHES, 0), SAY::wishesGo),
                line(goes.getOrDefault(Topic.SIGN_INS, 0), SAY::signInsGo));
    }

    /** What stays without a name, in sentences. */
    public List<String> staying() {
        return said(
                line(stays.getOrDefault(Topic.SOWINGS, 0), SAY::sowingsStay),
                line(left.trays(), SAY::traysStay),
                line(stays.getOrDefault(Topic.ENTRIES, 0), SAY::entriesStay),
                line(left.lots(), SAY::lotsStay),
                line(stays.getOrDefault(Topic.OTHER_WORK, 0), SAY::workStays),
                line(stays.getOrDefault(Topic.CHANGES, 0), SAY::changesStay));
    }

    /** Photos that they took, which go or stay as they choose. */
    public int photos() {
        return stays.getOrDefault(Topic.PHOTOS, 0);
    }

    private static String line(int count, IntFunction<String> sentence) {
        return count == 0 ? "" : sentence.apply(count);
    }

    private static List<String> said(String... lines) {
        return Stream.of(lines).filter(line -> !line.isEmpty()).toList();
    }
}
