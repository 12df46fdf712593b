package warmshelf.bench;

import com.aayushatharva.brotli4j.Brotli4jLoader;
import com.aayushatharva.brotli4j.decoder.BrotliInputStream;
import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.zip.GZIPInputStream;

/**
 * One connection to a server on this machine, kept open. Written on the bare socket because it must cost far less than the
 * server it measures, and because it counts the bytes that really came over the wire.
 */
final class Wire implements AutoCloseable {
    private final Socket socket;
    private final InputStream in;

    Wire(int port) throws IOException {
        socket = new Socket(InetAddress.getLoopbackAddress(), port);
        socket.setTcpNoDelay(true);
        socket.setSoTimeout(30_000);
        in = new BufferedInputStream(socket.getInputStream(), 65_536);
    }

    /**
     * An answer.
     *
     * @param bytes on the wire: status line, headers and the body as it was sent
     * @param encoding how it is packed: br, gzip or empty
     * @param stamp by which the same page is known again; empty where it has none
     */
    // The bytes of an answer, which nobody compares.
    @SuppressWarnings("ArrayRecordComponent")
    record Reply(int status, int bytes, String encoding, String stamp, byte[] body) {
        /** The page's text, unpacked. */
        String text() throws IOException {
            InputStream raw = new ByteArrayInputStream(body);
            try (InputStream open = unpacked(raw)) {
                return new String(open.readAllBytes(), StandardCharsets.UTF_8);
            }
        }

        private InputStream unpacked(InputStream raw) throws IOException {
            Brotli4jLoader.ensureAvailability();
            return switch (encoding) {
                case "br" -> new BrotliInputStream(raw);
                case "gzip" -> new GZIPInputStream(raw);
                default -> raw;
            };
        }
    }

    Reply get(Load.Ask ask) throws IOException {
        String request = "GET " + ask.path() + " HTTP/1.1\r\nHost: 127.0.0.1\r\n"
                + (ask.session().isEmpty() ? "" : "Cookie: warmshelf=" + ask.session() + "\r\n")
                + (ask.kept().isEmpty() ? "" : "If-None-Match: " + ask.kept() + "\r\n")
                + (ask.packed() ? "Accept-Encoding: gzip, deflate, br\r\n" : "")
                + "\r\n";
        socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
        return read();
    }

    /** Sends JSON as a script of the pages does. */
    Reply post(String path, String session, String json) throws IOException {
        byte[] body = json.getBytes(StandardCharsets.UTF_8);
        String head = "POST " + path + " HTTP/1.1\r\nHost: 127.0.0.1\r\nCookie: warmshelf=" + session
                + "\r\nContent-Type: application/json\r\nContent-Length: " + body.length + "\r\n\r\n";
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        whole.write(head.getBytes(StandardCharsets.US_ASCII));
        whole.write(body);
        whole.writeTo(socket.getOutputStream());
        return read();
    }

    private Reply read() throws IOException {
        String line = line();
        int status = Integer.parseInt(line.split(" ", -1)[1]);
        int bytes = line.length() + 2;
        int length = 0;
        boolean chunked = false;
        String encoding = "";
        String stamp = "";
        for (line = line(); !line.isEmpty(); line = line()) {
            bytes += line.length() + 2;
            String header = line.toLowerCase(Locale.ROOT);
            if (header.startsWith("content-length:")) {
                length = Integer.parseInt(header.substring(15).strip());
            }
            chunked |= header.startsWith("transfer-encoding:") && header.contains("chunked");
            encoding = header.startsWith("content-encoding:")
                    ? header.substring(17).strip()
                    : encoding;
            stamp = header.startsWith("etag:") ? line.substring(5).strip() : stamp;
        }
        bytes += 2;
        if (!chunked) {
            return new Reply(status, bytes + length, encoding, stamp, exactly(length));
        }
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (int size = chunkSize(); size > 0; size = chunkSize()) {
            byte[] chunk = exactly(size);
            body.write(chunk);
            line();
            bytes += size + Integer.toHexString(size).length() + 4;
        }
        line();
        return new Reply(status, bytes + 5, encoding, stamp, body.toByteArray());
    }

    private int chunkSize() throws IOException {
        return Integer.parseInt(line().strip(), 16);
    }

    private byte[] exactly(int length) throws IOException {
        byte[] read = in.readNBytes(length);
        if (read.length < length) {
            throw new EOFException("the connection ended in the middle of an answer");
        }
        return read;
    }

    private String line() throws IOException {
        StringBuilder line = new StringBuilder();
        for (int next = in.read(); next != '\n'; next = in.read()) {
            if (next < 0) {
                throw new EOFException("the connection ended in the middle of an answer");
            }
            if (next != '\r') {
                line.append((char) next);
            }
        }
        return line.toString();
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
