package warmshelf.photo;

import static warmshelf.photo.PhotoSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why a picture is not kept. */
sealed interface PhotoRefusal extends Message {
    /** A million, of bytes or of pixels. */
    int MILLION = 1_000_000;

    /** Its id stands for a picture of something else. */
    record IdInUse() implements PhotoRefusal {
        @Override
        public String words(Units units) {
            return SAY.idInUse();
        }
    }

    /** The form came without one. */
    record NoneSent() implements PhotoRefusal {
        @Override
        public String words(Units units) {
            return SAY.missing();
        }
    }

    /** The file is larger than is read at all; both in bytes. */
    record TooLarge(long bytes, int most) implements PhotoRefusal {
        @Override
        public String words(Units units) {
            return SAY.tooLarge(bytes / MILLION, most / MILLION);
        }
    }

    /** The file is no picture, or of a kind that is not read here. */
    record Unreadable() implements PhotoRefusal {
        @Override
        public String words(Units units) {
            return SAY.unreadable();
        }
    }

    /** It has more pixels than are read at all. */
    record TooManyPixels(int width, int height, long most) implements PhotoRefusal {
        @Override
        public String words(Units units) {
            return SAY.tooManyPixels(width, height, most / MILLION);
        }
    }

    /** Decoding it would hold too much memory, or take too long, for the way in which it was saved. */
    record TooManyScans() implements PhotoRefusal {
        @Override
        public String words(Units units) {
            return SAY.tooManyScans();
        }
    }

    /** Too many others are being made small. */
    record OthersFirst() implements PhotoRefusal {
        @Override
        public String words(Units units) {
            return SAY.othersFirst();
        }
    }

    /** Even small and blurred it takes more room than one picture may. */
    record TooRich() implements PhotoRefusal {
        @Override
        public String words(Units units) {
            return SAY.tooRich();
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
