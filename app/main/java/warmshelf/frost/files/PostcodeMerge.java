package warmshelf.frost.files;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Joins the rows of each postcode without holding all of them: they are dealt out by their code over some files, and each file
 * is small enough to be joined in memory. A country of two million codes needs a few megabytes at a time.
 */
final class PostcodeMerge implements AutoCloseable {
    private static final int FILES = 64;

    private final List<Path> files = new ArrayList<>();
    private final List<DataOutputStream> outs = new ArrayList<>();

    PostcodeMerge(Path folder) throws IOException {
        for (int i = 0; i < FILES; i++) {
            Path file = Files.createTempFile(folder, "postcodes", ".part");
            files.add(file);
            outs.add(new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(file))));
        }
    }

    void add(PostcodeRow row) throws IOException {
        DataOutputStream out = outs.get(Math.floorMod((row.country() + row.code()).hashCode(), FILES));
        out.writeUTF(row.country());
        out.writeUTF(row.code());
        out.writeUTF(row.place());
        out.writeUTF(row.region());
        out.writeDouble(row.latitude());
        out.writeDouble(row.longitude());
    }

    /** Hands on each code once. */
    void forEach(Consumer<PostcodeRow> consumer) throws IOException {
        for (int i = 0; i < FILES; i++) {
            outs.get(i).close();
            joined(files.get(i)).values().forEach(sum -> consumer.accept(sum.mean()));
        }
    }

    private static Map<String, Sum> joined(Path file) throws IOException {
        Map<String, Sum> sums = new LinkedHashMap<>();
        long size = Files.size(file);
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(Files.newInputStream(file)))) {
            while (size > 0 && in.available() > 0) {
                PostcodeRow row = new PostcodeRow(
                        in.readUTF(), in.readUTF(), in.readUTF(), in.readUTF(), in.readDouble(), in.readDouble());
                sums.computeIfAbsent(row.country() + row.code(), key -> new Sum(row))
                        .add(row);
            }
        }
        return sums;
    }

    @Override
    public void close() throws IOException {
        for (int i = 0; i < files.size(); i++) {
            outs.get(i).close();
            Files.deleteIfExists(files.get(i));
        }
    }

    /** The rows of one code so far. */
    private static final class Sum {
        private final PostcodeRow first;
        private double latitude;
        private double longitude;
        private int rows;

        Sum(PostcodeRow first) {
            this.first = first;
        }

        void add(PostcodeRow row) {
            latitude += row.latitude();
            longitude += row.longitude();
            rows++;
        }

        PostcodeRow mean() {
            return new PostcodeRow(
                    first.country(), first.code(), first.place(), first.region(), latitude / rows, longitude / rows);
        }
    }
}
