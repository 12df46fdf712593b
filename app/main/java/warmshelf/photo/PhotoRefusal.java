package warmshelf.photo;

import static warmshelf.photo.PhotoSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why a picture is not kept. */
sealed interface PhotoRefusal extends Message {

    /** Its id stands for a picture of something else. */
    record IdInUse() implements PhotoRefusal {
        @Override
        public String words(Units units) {
            return SAY.idInUse();
        }
    }

    /** There are as many as there may be. */
    record Enough(PhotoSubject subject) implements PhotoRefusal {
        @Override
        public String words(Units units) {
            return subject == PhotoSubject.LOT ? SAY.enoughOfPacket(subject.most()) : SAY.enoughOfEntry(subject.most());
        }
    }
}
