package warmshelf.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Files such as cameras and people send. */
public final class Pictures {
    private Pictures() {}

    /** A JPEG whose left half is red and whose right half is blue. */
    public static byte[] jpeg(int width, int height) {
        return file(redAndBlue(width, height), "jpg");
    }

    static BufferedImage redAndBlue(int width, int height) {
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D paint = picture.createGraphics();
        paint.setColor(Color.RED);
        paint.fillRect(0, 0, width / 2, height);
        paint.setColor(Color.BLUE);
        paint.fillRect(width / 2, 0, width - width / 2, height);
        paint.dispose();
        return picture;
    }

    /** A progressive JPEG, as picture programs save them. */
    static byte[] progressive(int width, int height) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpg").next();
        ImageWriteParam way = writer.getDefaultWriteParam();
        way.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
        try (ByteArrayOutputStream file = new ByteArrayOutputStream();
                ImageOutputStream output = ImageIO.createImageOutputStream(file)) {
            writer.setOutput(output);
            writer.write(null, new IIOImage(redAndBlue(width, height), null, null), way);
            output.flush();
            return file.toByteArray();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } finally {
            writer.dispose();
        }
    }

    /** The same file, which says of itself that it is of another size. */
    static byte[] sayingItIs(byte[] jpeg, int width, int height) {
        ByteBuffer file = ByteBuffer.wrap(jpeg.clone());
        for (int i = 2; i < jpeg.length - 9; i++) {
            if ((jpeg[i] & 0xff) == 0xff && ((jpeg[i + 1] & 0xff) == 0xc0 || (jpeg[i + 1] & 0xff) == 0xc2)) {
                file.putShort(i + 5, (short) height).putShort(i + 7, (short) width);
                return file.array();
            }
        }
        throw new IllegalArgumentException("no frame");
    }

    /** The same file, with its last scan so many times more. */
    static byte[] withMoreScans(byte[] jpeg, int more) {
        int scan = jpeg.length - 2;
        while ((jpeg[scan] & 0xff) != 0xff || (jpeg[scan + 1] & 0xff) != 0xda) {
            scan--;
        }
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.write(jpeg, 0, jpeg.length - 2);
        for (int i = 0; i < more; i++) {
            file.write(jpeg, scan, jpeg.length - 2 - scan);
        }
        file.write(jpeg, jpeg.length - 2, 2);
        return file.toByteArray();
    }

    /** Nothing is harder to make small than this. */
    static byte[] noise(int width, int height) {
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(7);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                picture.setRGB(x, y, random.nextInt(0x1000000));
            }
        }
        return file(picture, "jpg");
    }

    static byte[] seeThroughPng(int width, int height) {
        return file(new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB), "png");
    }

    static byte[] file(BufferedImage picture, String format) {
        try (ByteArrayOutputStream file = new ByteArrayOutputStream()) {
            ImageIO.write(picture, format, file);
            return file.toByteArray();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static BufferedImage read(byte[] file) {
        try {
            return Objects.requireNonNull(ImageIO.read(new ByteArrayInputStream(file)));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /**
     * The same picture as a camera writes it: with an application segment FF E1 that begins 'Exif', two zeros and a TIFF
     * header, whose tags are 0x010F (make) and 0x0112 (orientation). Segments: ISO/IEC 10918-1, annex B; tags: the Exif
     * standard 2.3, section 4.
     *
     * @param orientation 6: the camera was turned a quarter to the left, so the picture is to be turned to the right
     */
    public static byte[] asFromCamera(byte[] jpeg, int orientation) {
        byte[] make = "Cellar camera\0".getBytes(StandardCharsets.US_ASCII);
        int tags = 2;
        int afterTags = 8 + 2 + 12 * tags + 4;
        ByteBuffer tiff = ByteBuffer.allocate(afterTags + make.length);
        tiff.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
        tiff.putShort((short) tags);
        tiff.putShort((short) 0x010F).putShort((short) 2).putInt(make.length).putInt(afterTags);
        tiff.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0);
        tiff.putInt(0).put(make);
        ByteBuffer whole = ByteBuffer.allocate(jpeg.length + 4 + 6 + tiff.capacity());
        whole.put(jpeg, 0, 2);
        whole.put((byte) 0xFF).put((byte) 0xE1).putShort((short) (2 + 6 + tiff.capacity()));
        whole.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put(tiff.array());
        whole.put(jpeg, 2, jpeg.length - 2);
        return whole.array();
    }

    /** Whether a JPEG holds what a camera writes beside the picture: walks its segments up to the picture itself (FF DA). */
    public static boolean tellsMore(byte[] jpeg) {
        ByteBuffer file = ByteBuffer.wrap(jpeg);
        file.position(2);
        while (file.remaining() > 4) {
            int marker = file.getShort() & 0xFFFF;
            if (marker == 0xFFDA) {
                return false;
            }
            // E0 is the plain JFIF header; E1 to EF and FE hold Exif, colour profiles, previews, remarks
            if ((marker > 0xFFE0 && marker <= 0xFFEF) || marker == 0xFFFE) {
                return true;
            }
            file.position(file.position() + (file.getShort(file.position()) & 0xFFFF));
        }
        throw new IllegalArgumentException("not a whole JPEG");
    }
}
