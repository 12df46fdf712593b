package warmshelf.archive;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** Counts the bytes that go through. */
final class CountedBytes extends FilterOutputStream {
    private long bytes;

    CountedBytes(OutputStream out) {
        super(out);
    }

    @Override
    public void write(int one) throws IOException {
        out.write(one);
        bytes++;
    }

    @Override
    public void write(byte[] some, int from, int length) throws IOException {
        out.write(some, from, length);
        bytes += length;
    }

    long bytes() {
        return bytes;
    }
}
