package warmshelf.reminder.push;

import static warmshelf.reminder.push.PushSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why an address is not taken for a push service's. */
public sealed interface EndpointRefusal extends Message {

    /** What is wrong with it, as the end of a sentence. */
    String trouble();

    @Override
    default String words(Units units) {
        return SAY.unfit(trouble());
    }

    /** What is wrong without a figure. */
    enum Fault implements EndpointRefusal {
        EMPTY(SAY.empty()),
        NO_ADDRESS(SAY.noAddress()),
        NOT_HTTPS(SAY.notHttps()),
        /** It names no server, or a user beside it. */
        NO_SERVER(SAY.noServer()),
        NOT_PUBLIC(SAY.notPublic()),
        HAS_FRAGMENT(SAY.hasFragment());

        private final String trouble;

        Fault(String trouble) {
            this.trouble = trouble;
        }

        @Override
        public String trouble() {
            return trouble;
        }
    }

    /** It has more characters than are kept. */
    record TooLong(int characters, int most) implements EndpointRefusal {
        @Override
        public String trouble() {
            return SAY.tooLong(characters, most);
        }
    }

    /** It asks for another port than the usual one. */
    record OtherPort(int port, int used) implements EndpointRefusal {
        @Override
        public String trouble() {
            return SAY.otherPort(String.valueOf(port), String.valueOf(used));
        }
    }
}
