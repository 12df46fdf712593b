package warmshelf.table;

import static warmshelf.table.TableSentences.SAY;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;

/** How the letters of a file are written, as told from its bytes. */
public enum TextEncoding {
    UTF_8(StandardCharsets.UTF_8, 0),
    UTF_8_MARKED(StandardCharsets.UTF_8, 3),
    UTF_16_LITTLE(StandardCharsets.UTF_16LE, 0),
    UTF_16_LITTLE_MARKED(StandardCharsets.UTF_16LE, 2),
    UTF_16_BIG(StandardCharsets.UTF_16BE, 0),
    UTF_16_BIG_MARKED(StandardCharsets.UTF_16BE, 2),
    /** Guessed: its bytes tell only that it is nothing else. */
    WINDOWS_1252(Charset.forName("windows-1252"), 0);

    private static final int LOOKED_AT = 4096;
    private static final byte[] ZIP = {'P', 'K', 3, 4};
    private static final byte[] OLD_WORKBOOK = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};
    private static final byte[] PDF = {'%', 'P', 'D', 'F'};

    private final Charset charset;
    private final int markBytes;

    TextEncoding(Charset charset, int markBytes) {
        this.charset = charset;
        this.markBytes = markBytes;
    }

    /** Whether it was guessed, because no byte proves it. */
    public boolean isGuessed() {
        return this == WINDOWS_1252;
    }

    /** Its usual name. */
    public String words() {
        return charset.name();
    }

    /**
     * Tells how a file is written.
     *
     * @throws BadInput when it is no text at all
     */
    public static TextEncoding of(Path file) throws IOException {
        byte[] start;
        try (InputStream stream = Files.newInputStream(file)) {
            start = stream.readNBytes(LOOKED_AT);
        }
        if (startsWith(start, ZIP) || startsWith(start, OLD_WORKBOOK)) {
            throw new BadInput(SAY.workbook());
        }
        if (startsWith(start, PDF)) {
            throw new BadInput(SAY.noText());
        }
        TextEncoding told = byMark(start);
        if (told == null) {
            told = byZeros(start);
        }
        if (told == null) {
            told = isUtf8(file) ? UTF_8 : WINDOWS_1252;
        }
        refuseOtherThanLetters(file, told);
        return told;
    }

    private static @Nullable TextEncoding byMark(byte[] start) {
        for (TextEncoding encoding : values()) {
            ByteBuffer mark = encoding.charset.encode("\uFEFF");
            byte[] marking = new byte[mark.remaining()];
            mark.get(marking);
            if (encoding.markBytes > 0 && startsWith(start, marking)) {
                return encoding;
            }
        }
        return null;
    }

    /** Text of mostly Latin letters has a zero in every other byte of UTF-16. */
    private static @Nullable TextEncoding byZeros(byte[] start) {
        int[] zeros = new int[2];
        for (int i = 0; i < start.length; i++) {
            zeros[i % 2] += start[i] == 0 ? 1 : 0;
        }
        int many = start.length / 6;
        if (zeros[1] > many && zeros[0] < zeros[1] / 10 + 1) {
            return UTF_16_LITTLE;
        }
        return zeros[0] > many && zeros[1] < zeros[0] / 10 + 1 ? UTF_16_BIG : null;
    }

    private static boolean isUtf8(Path file) throws IOException {
        try (Reader reader = UTF_8.open(Files.newInputStream(file))) {
            char[] some = new char[LOOKED_AT];
            while (reader.read(some) >= 0) {
                // only whether it can be read is asked
            }
            return true;
        } catch (CharacterCodingException other) {
            return false;
        }
    }

    private static void refuseOtherThanLetters(Path file, TextEncoding told) throws IOException {
        try (Reader reader = told.open(Files.newInputStream(file))) {
            char[] some = new char[LOOKED_AT];
            for (int n = reader.read(some); n >= 0; n = reader.read(some)) {
                for (int i = 0; i < n; i++) {
                    if (some[i] == 0) {
                        throw new BadInput(SAY.holdsNul());
                    }
                    if (some[i] == 0xFFFD || (some[i] < ' ' && "\t\r\n\f".indexOf(some[i]) < 0)) {
                        throw new BadInput(SAY.noText());
                    }
                }
            }
        } catch (CharacterCodingException damaged) {
            throw new BadInput(SAY.damagedText(told.words()));
        }
    }

    /** The text of such a file, without its mark; closing it closes the stream. */
    Reader open(InputStream stream) throws IOException {
        BufferedInputStream buffered = new BufferedInputStream(stream, 65_536);
        buffered.skipNBytes(markBytes);
        return new InputStreamReader(
                buffered,
                charset.newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT));
    }

    private static boolean startsWith(byte[] whole, byte[] sought) {
        return whole.length >= sought.length && Arrays.equals(whole, 0, sought.length, sought, 0, sought.length);
    }
}
