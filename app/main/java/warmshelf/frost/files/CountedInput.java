package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import warmshelf.BadInput;

/** Counts the bytes sent and the lines unpacked while they are read, tells the watch, and stops what unpacks without end. */
final class CountedInput {
    private final ReadingProgress watch;
    private final long mostUnpacked;
    private long bytes;
    private long unpacked;
    private long rows;

    CountedInput(ReadingProgress watch, long mostUnpacked) {
        this.watch = watch;
        this.mostUnpacked = mostUnpacked;
    }

    long bytes() {
        return bytes;
    }

    long rows() {
        return rows;
    }

    /** A file as it was sent. */
    InputStream sent(InputStream stream) {
        return new FilterInputStream(stream) {
            @Override
            public int read() throws IOException {
                int one = super.read();
                count(one < 0 ? 0 : 1);
                return one;
            }

            @Override
            public int read(byte[] into, int from, int length) throws IOException {
                int read = super.read(into, from, length);
                count(Math.max(0, read));
                return read;
            }

            private void count(int read) {
                bytes += read;
                watch.at(bytes, rows);
            }
        };
    }

    /** The text in it; closing it leaves what lies below open. */
    InputStream text(InputStream stream) {
        return new FilterInputStream(stream) {
            @Override
            public int read() throws IOException {
                byte[] one = new byte[1];
                return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
            }

            @Override
            public int read(byte[] into, int from, int length) throws IOException {
                int read = super.read(into, from, length);
                for (int i = from; i < from + read; i++) {
                    rows += into[i] == '\n' ? 1 : 0;
                }
                unpacked += Math.max(0, read);
                if (unpacked > mostUnpacked) {
                    throw new BadInput(SAY.unpacksToTooMuch(mostUnpacked / 1_000_000));
                }
                // a text packed a thousandfold takes hardly a byte from what was sent
                watch.at(bytes, rows);
                return read;
            }

            @Override
            public void close() {
                // the file below may hold more texts; whoever opened it closes it
            }
        };
    }
}
