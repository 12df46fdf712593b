package warmshelf.photo;

import java.util.Optional;

/**
 * What it takes to decode a JPEG file, told by its markers before anything is decoded (ITU-T T.81, annex B). A file in several
 * scans, as progressive ones are, can only be decoded with all its coefficients held at once, two bytes each, and each scan goes
 * over all of them again; a file in one scan is decoded strip by strip.
 *
 * @param coefficients of all components together
 * @param scans how often the decoder goes over the picture
 */
record JpegFile(boolean progressive, long coefficients, int scans) {
    private static final int BYTES_EACH = 2;
    private static final int START = 0xd8;
    private static final int END = 0xd9;
    private static final int SCAN = 0xda;
    private static final int PROGRESSIVE = 0xc2;

    /** Reads what a file says of its picture; empty when it is no JPEG file, or is broken before its picture begins. */
    static Optional<JpegFile> of(byte[] file) {
        if (file.length < 4 || at(file, 0) != 0xff || at(file, 1) != START) {
            return Optional.empty();
        }
        boolean progressive = false;
        long coefficients = 0;
        int scans = 0;
        int i = 2;
        while (i + 4 <= file.length) {
            if (at(file, i) != 0xff || isFilling(at(file, i + 1))) {
                i++;
                continue;
            }
            int marker = at(file, i + 1);
            if (marker == END) {
                break;
            }
            if (isFrame(marker)) {
                progressive = marker == PROGRESSIVE;
                coefficients = coefficients(file, i + 4);
            }
            scans += marker == SCAN ? 1 : 0;
            i += 2 + Math.max(2, two(file, i + 2));
        }
        return coefficients == 0 ? Optional.empty() : Optional.of(new JpegFile(progressive, coefficients, scans));
    }

    /** Bytes that the decoder holds at once beside what it gives out. */
    long heldBytes() {
        return progressive || scans > 1 ? coefficients * BYTES_EACH : 0;
    }

    /** What stands for a byte of the picture's data, fills a gap or only restarts the decoder. */
    private static boolean isFilling(int second) {
        return second == 0 || second == 0xff || second == 1 || (second >= 0xd0 && second < START);
    }

    /** The start of a frame, of whichever kind: C0 to CF but for three tables that lie between. */
    private static boolean isFrame(int marker) {
        return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
    }

    /** Precision, height, width, number of components; then three bytes each, the second with both sampling factors. */
    private static long coefficients(byte[] file, int frame) {
        int components = frame + 6 <= file.length ? at(file, frame + 5) : 0;
        if (components == 0 || frame + 6 + 3 * components > file.length) {
            return 0;
        }
        long samples = 0;
        long most = 1;
        for (int k = 0; k < components; k++) {
            int factors = at(file, frame + 6 + 3 * k + 1);
            long product = (long) (factors >> 4) * (factors & 15);
            samples += product;
            most = Math.max(most, product);
        }
        long pixels = (long) two(file, frame + 1) * two(file, frame + 3);
        return pixels * samples / most;
    }

    private static int two(byte[] file, int i) {
        return i + 1 < file.length ? at(file, i) << 8 | at(file, i + 1) : 0;
    }

    private static int at(byte[] file, int i) {
        return file[i] & 0xff;
    }
}
