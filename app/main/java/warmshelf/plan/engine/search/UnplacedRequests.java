package warmshelf.plan.engine.search;

import java.util.Arrays;
import java.util.Random;

/** The requests that have no place, so that one can be drawn by chance. */
final class UnplacedRequests {
    private final int[] asks;
    private final int[] position;
    private int size;

    UnplacedRequests(int howMany) {
        asks = new int[howMany];
        position = new int[howMany];
        Arrays.fill(position, -1);
    }

    int size() {
        return size;
    }

    int draw(Random random) {
        return asks[random.nextInt(size)];
    }

    void add(int ask) {
        if (position[ask] < 0) {
            position[ask] = size;
            asks[size++] = ask;
        }
    }

    void remove(int ask) {
        int at = position[ask];
        if (at >= 0) {
            int last = asks[--size];
            asks[at] = last;
            position[last] = at;
            position[ask] = -1;
        }
    }
}
