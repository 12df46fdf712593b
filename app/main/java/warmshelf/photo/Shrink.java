package warmshelf.photo;

import com.drew.imaging.jpeg.JpegMetadataReader;
import com.drew.imaging.jpeg.JpegProcessingException;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import net.coobird.thumbnailator.Thumbnails;
import net.coobird.thumbnailator.util.exif.ExifFilterUtils;
import net.coobird.thumbnailator.util.exif.Orientation;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;

/**
 * Makes a picture small enough to keep. What comes in is decoded and written anew, whoever says it is small already: so
 * nothing stays of what a camera writes beside the picture (place, time, make, a preview), nor of what is no picture.
 */
final class Shrink {
    /** The most bytes that are kept of one picture. */
    static final int MOST_BYTES = 300 * 1024;

    /** The longer side of what is kept, in pixels: a mould spot or a fallen stem can be made out. */
    static final int LONGEST_SIDE = 1280;

    /** What is read at all; the largest phone cameras make twice a hundred million. */
    static final long MOST_PIXELS = 220_000_000L;

    /** What the decoder may hold of a picture in several scans: some 35 million pixels of a progressive one. */
    private static final long MOST_HELD = 110_000_000L;

    /** Programs write about ten scans; each costs a look at the whole picture. */
    private static final int MOST_SCANS = 64;

    /** Decoding takes memory outside the heap, so only one picture is decoded at a time. */
    private static final Semaphore ONE_AT_A_TIME = new Semaphore(1, true);

    private static final int PATIENCE_SECONDS = 30;

    private static final Set<String> FORMATS = Set.of("jpeg", "png");
    /** The Exif standard numbers eight ways to hold a camera. */
    private static final int ORIENTATIONS = 8;

    private static final double[] QUALITIES = {0.82, 0.7, 0.55, 0.4};
    private static final int[] SIDES = {LONGEST_SIDE, 960, 640};

    static {
        // a picture is in memory already, so nothing of it needs to lie on the disk
        ImageIO.setUseCache(false);
    }

    private Shrink() {}

    /** The picture in a file; a no where it is none, or of a kind that is not read here. */
    static Decision<Picture> picture(byte[] file) {
        return Decision.of(() -> read(file));
    }

    private static Picture read(byte[] file) {
        Optional<JpegFile> jpeg = JpegFile.of(file);
        if (jpeg.isPresent()
                && (jpeg.get().heldBytes() > MOST_HELD || jpeg.get().scans() > MOST_SCANS)) {
            throw Declined.refused(new PhotoRefusal.TooManyScans());
        }
        waitForTurn();
        try {
            return readAlone(file);
        } finally {
            ONE_AT_A_TIME.release();
        }
    }

    private static void waitForTurn() {
        try {
            if (!ONE_AT_A_TIME.tryAcquire(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw Declined.refused(new PhotoRefusal.OthersFirst());
            }
        } catch (InterruptedException stopping) {
            Thread.currentThread().interrupt();
            throw Declined.refused(new PhotoRefusal.OthersFirst());
        }
    }

    private static Picture readAlone(byte[] file) {
        try (ImageInputStream input = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(input);
            if (!readers.hasNext()) {
                throw notAPicture();
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(input);
                return small(upright(decoded(reader), file));
            } finally {
                reader.dispose();
            }
        } catch (Declined no) {
            throw no;
        } catch (IOException | RuntimeException broken) {
            // the readers answer a broken file with exceptions of every kind
            throw notAPicture();
        }
    }

    private static Declined notAPicture() {
        return Declined.refused(new PhotoRefusal.Unreadable());
    }

    private static BufferedImage decoded(ImageReader reader) throws IOException {
        if (!FORMATS.contains(reader.getFormatName().toLowerCase(Locale.ROOT))) {
            throw notAPicture();
        }
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        if ((long) width * height > MOST_PIXELS) {
            throw Declined.refused(new PhotoRefusal.TooManyPixels(width, height, MOST_PIXELS));
        }
        ImageReadParam part = reader.getDefaultReadParam();
        // Twice the size that is kept is plenty to make it from, and fits into a small machine's memory.
        int every = Math.max(1, Math.max(width, height) / (2 * LONGEST_SIDE));
        part.setSourceSubsampling(every, every, 0, 0);
        return onWhite(reader.read(0, part));
    }

    private static BufferedImage upright(BufferedImage decoded, byte[] file) {
        return orientation(file)
                .filter(orientation -> orientation != Orientation.TOP_LEFT)
                .map(orientation ->
                        ExifFilterUtils.getFilterForOrientation(orientation).apply(decoded))
                .orElse(decoded);
    }

    /** How the camera was held, where a photo (a JPEG) says so readably. */
    private static Optional<Orientation> orientation(byte[] file) {
        try {
            // Only this part is read: others can hold XML, which nobody needs.
            Metadata beside =
                    JpegMetadataReader.readMetadata(new ByteArrayInputStream(file), List.of(new ExifReader()));
            ExifIFD0Directory camera = beside.getFirstDirectoryOfType(ExifIFD0Directory.class);
            Integer number = camera == null ? null : camera.getInteger(ExifDirectoryBase.TAG_ORIENTATION);
            return number == null || number < 1 || number > ORIENTATIONS
                    ? Optional.empty()
                    : Optional.of(Orientation.typeOf(number));
        } catch (JpegProcessingException | IOException | RuntimeException unreadable) {
            return Optional.empty();
        }
    }

    /** JPEG knows no see-through. */
    private static BufferedImage onWhite(BufferedImage read) {
        BufferedImage plain = new BufferedImage(read.getWidth(), read.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D paint = plain.createGraphics();
        paint.drawImage(read, 0, 0, Color.WHITE, null);
        paint.dispose();
        return plain;
    }

    private static Picture small(BufferedImage upright) throws IOException {
        for (int side : SIDES) {
            BufferedImage scaled = scaled(upright, side);
            for (double quality : QUALITIES) {
                byte[] jpeg = jpeg(scaled, quality);
                if (jpeg.length <= MOST_BYTES) {
                    return new Picture(jpeg, scaled.getWidth(), scaled.getHeight());
                }
            }
        }
        throw Declined.refused(new PhotoRefusal.TooRich());
    }

    private static BufferedImage scaled(BufferedImage upright, int side) throws IOException {
        boolean fits = Math.max(upright.getWidth(), upright.getHeight()) <= side;
        return fits ? upright : Thumbnails.of(upright).size(side, side).asBufferedImage();
    }

    private static byte[] jpeg(BufferedImage picture, double quality) throws IOException {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        Thumbnails.of(picture)
                .scale(1)
                .outputFormat("jpg")
                .outputQuality(quality)
                .toOutputStream(file);
        return file.toByteArray();
    }
}
