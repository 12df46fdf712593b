package warmshelf.web;

import java.util.UUID;

/** What is known of forms that were sent: each counts once, however often it arrives. */
public interface Submissions {
    /** The answering of one request. */
    interface Answering {
        void run() throws Exception;
    }

    /** Whether what members send can be kept just now. */
    boolean haveRoom();

    /**
     * Answers a form, unless it has been counted.
     *
     * @param fingerprint what tells this form from every other, at most 64 characters
     * @return whether it was answered; false when the same form has written already, in which case nothing more is written
     */
    boolean answer(String fingerprint, UUID memberId, Answering answering) throws Exception;
}
