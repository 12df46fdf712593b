package warmshelf.jar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.photo.Pictures;
import warmshelf.testing.EveryWrite;
import warmshelf.testing.FormFiller;
import warmshelf.testing.TestGroup;
import warmshelf.testing.WritingRound;

/**
 * The packaged demo, whose database was made in the same run, used before and after its pool has retired every connection, as it
 * does after half an hour. What can be written is not listed here but taken from the program's own addresses and pages.
 */
class RetiredConnectionsIT {
    /** Addresses that no form of the demo leads to, with the reason; a room that is not among them has to be written to. */
    private static final Set<String> OUT_OF_REACH = Set.of(
            // for strangers, by links that are used up
            "/open/{token}",
            "/join/{token}",
            "/in/{token}",
            "/tablet/{token}",
            "/sign-in",
            // needs a device that signs, and an address by name
            "/sign-in/passkey",
            "/sign-in/passkey/question",
            "/settings/passkeys/question",
            "/settings/passkeys/answer",
            "/settings/passkeys/{id}/end",
            // ends the session that the rest needs
            "/sign-out",
            "/settings/passphrase",
            "/settings/erasure",
            // would take away what the others write to
            "/sites/{id}/deletion",
            "/sites/racks/{id}/deletion",
            "/sites/shelves/{id}/deletion",
            "/sites/mats/{id}/deletion",
            "/sites/{id}/retirement",
            "/sites/{id}/retirement/end",
            "/sites/racks/{id}/retirement",
            "/sites/racks/{id}/retirement/end",
            "/sites/shelves/{id}/retirement",
            "/sites/shelves/{id}/retirement/end",
            "/sites/mats/{id}/retirement",
            "/sites/mats/{id}/retirement/end",
            // would make whoever writes a coordinator of some sites alone
            "/people/{id}/sites",
            // would end the season that the others write to, and what follows upon that
            "/season/close",
            "/season/close/undo",
            "/season/open",
            "/season/open/undo",
            "/season/name",
            "/ask/again",
            // only once somebody has left, and only by their name
            "/people/{id}/erasure",
            // only on a tablet, which a coordinator is not
            "/today/looker",
            // sent by scripts as JSON, not by forms
            "/round/entries",
            "/round/photos",
            "/api/v1/round/entries",
            "/api/v1/mats/{id}/readings",
            "/api/v1/thermometers/{id}/nights",
            "/reminders/devices/moved",
            // the plan's second button, which a walk along forms does not press, and what stands once it was
            "/ask/gathered",
            "/ask/gathered/sending",
            "/ask/gathered/{id}/removal",
            "/ask/gathered/{id}/return",
            // the demo has neither a mail server nor keys for notices
            "/reminders/letters",
            "/reminders/devices",
            "/reminders/devices/wishes",
            "/reminders/devices/{id}/removal",
            "/reminders/devices/{id}/test",
            // a photo is neither a table nor a file of weather records, so nothing of these is ever there
            "/files/incoming",
            "/files/incoming/{id}/cancellation",
            "/files/incoming/{id}/taking",
            "/frost/imports",
            "/frost/imports/{id}/cancellation",
            "/frost/imports/{id}/taking",
            "/frost/imports/{id}/removal",
            "/frost/stations/{id}/removal",
            // only while a plan is worked on, or once one was undone
            "/plans/{id}/cancellation",
            "/plans/{id}/offers",
            "/plans/{id}/undoing",
            // only where somebody else's doing gives the occasion, at most once in the demo
            "/notes/{id}/dismissal",
            "/racks/{id}/clearing",
            "/sowings/{id}/freed-place",
            "/sowings/{id}/withdrawal",
            // its page draws the places, and a form stands there only for one that was chosen
            "/stays/{id}/move",
            "/stays/{id}/undo",
            "/photos/{id}/removal");

    @TempDir
    private Path folder;

    @Test
    void everything_can_still_be_written_when_the_first_connections_are_gone() throws IOException {
        EveryWrite writes = everyWrite();
        try (JarDemo demo = JarDemo.start(folder)) {
            WritingRound round = round(writes);
            round.go(demo.coordinator());
            round.go(demo.member());
            round.go(demo.coordinator());
            Set<String> before = round.written();

            demo.retireConnections();
            round.again();
            Set<String> after = round.written();

            assertThat(round.faults()).isEmpty();
            assertThat(Files.readString(folder.resolve("err.txt"))).doesNotContain("ERROR", "WARN");
            assertThat(rooms(before)).containsAll(rooms(reachable(writes)));
            // some things can be done only once: a place that was freed is taken
            assertThat(after.size()).isGreaterThan(before.size() / 2);
        }
    }

    private static EveryWrite everyWrite() {
        try (TestGroup group = TestGroup.unopened()) {
            return EveryWrite.of(group.server().rights());
        }
    }

    private static WritingRound round(EveryWrite writes) {
        FormFiller filler = new FormFiller(LocalDate.now(ZoneId.of("America/Chicago")), "warm shelf in winter");
        return new WritingRound(writes, filler, Pictures.jpeg(40, 30), OUT_OF_REACH);
    }

    private static Set<String> reachable(EveryWrite writes) {
        Set<String> reachable = new TreeSet<>(writes.addresses());
        reachable.removeAll(OUT_OF_REACH);
        return reachable;
    }

    /** The first words of the addresses, such as 'seeds'; each has to be written to. */
    private static Set<String> rooms(Set<String> addresses) {
        return addresses.stream()
                .map(address -> address.replaceAll("^/([^/]+).*", "$1"))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
