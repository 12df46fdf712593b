package warmshelf.group;

import static warmshelf.db.generated.Tables.SUBMISSION;

import java.util.UUID;
import warmshelf.db.Database;
import warmshelf.db.Submission;
import warmshelf.web.Submissions;

/** Forms that members have sent, kept in the database so that a restart or a second node counts none of them twice. */
public final class SubmissionStore implements Submissions {
    private final Database database;

    public SubmissionStore(Database database) {
        this.database = database;
    }

    @Override
    public boolean haveRoom() {
        return database.room().map(room -> !room.isFull()).orElse(true);
    }

    @Override
    public boolean answer(String fingerprint, UUID memberId, Answering answering) throws Exception {
        if (database.sql().fetchExists(SUBMISSION, SUBMISSION.FINGERPRINT.eq(fingerprint))) {
            return false;
        }
        try {
            Submission.<Exception>answering(fingerprint, memberId, answering::run);
            return true;
        } catch (Submission.AlreadyCounted meanwhile) {
            return false;
        }
    }
}
