package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

/** Strangers that open many connections and hardly send anything. Bounded in time: a group that is held up fails by its client. */
class SlowSendersTest {
    /** More than the server has threads. */
    private static final int MANY = 350;

    private static final String FORM = "POST /sign-in HTTP/1.1\r\nHost: localhost\r\nContent-Type:"
            + " application/x-www-form-urlencoded\r\nContent-Length: %d\r\n\r\n";

    private final List<Socket> senders = new ArrayList<>();
    private TestGroup group;

    @BeforeEach
    void open() {
        group = TestGroup.open();
    }

    @AfterEach
    void close() throws IOException {
        for (Socket sender : senders) {
            sender.close();
        }
        group.close();
    }

    @Test
    void forms_sent_byte_by_byte_leave_everybody_else_their_pages() throws IOException {
        Browser tom = group.signedIn(group.member());
        for (int i = 0; i < MANY; i++) {
            send(connect("127.0.0.1"), FORM.formatted(100) + "n");
        }

        assertThat(group.stranger().get("/health").status()).isEqualTo(200);
        assertThat(tom.get("/today").status()).isEqualTo(200);
    }

    @Test
    void one_address_gets_only_so_many_connections_and_others_theirs() throws Exception {
        for (int i = 0; i < 450; i++) {
            send(connect("127.0.0.1"), FORM.formatted(100));
        }
        Socket other = connect("127.0.0.2");
        send(other, "GET /health HTTP/1.1\r\nHost: localhost\r\n\r\n");

        assertThat(firstLine(other)).contains("200");
        long open = stillOpen();
        for (int looks = 0; open > 430 && looks < 100; looks++) {
            // that the server hung up is on its way
            Thread.sleep(100);
            open = stillOpen();
        }
        assertThat(open).isBetween(300L, 430L);
    }

    @Test
    void connections_that_have_ended_do_not_count() throws IOException {
        for (int i = 0; i < 1_000; i++) {
            try (Socket socket = connect("127.0.0.1")) {
                send(socket, "GET /health HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
                assertThat(firstLine(socket)).as("connection %s", i).contains("200");
            }
        }
    }

    @Test
    void who_sends_below_the_least_rate_is_told_and_hung_up_on() throws Exception {
        Socket slow = connect("127.0.0.1");
        send(slow, FORM.formatted(100));
        for (int i = 0; i < 3; i++) {
            send(slow, "n");
            Thread.sleep(200);
        }

        assertThat(firstLine(slow)).contains("400");
    }

    @Test
    void a_form_in_pieces_is_taken_whole() throws Exception {
        String body = "name=Tom&passphrase=wrong";
        Socket phone = connect("127.0.0.1");
        send(phone, FORM.formatted(body.length()) + body.substring(0, 9));
        Thread.sleep(100);
        send(phone, body.substring(9));

        assertThat(firstLine(phone)).contains("422");
    }

    private long stillOpen() {
        return senders.stream().filter(SlowSendersTest::isOpen).count();
    }

    private Socket connect(String from) throws IOException {
        Socket socket = new Socket();
        senders.add(socket);
        socket.setSoTimeout(20_000);
        socket.bind(new InetSocketAddress(InetAddress.getByName(from), 0));
        socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), group.port()), 10_000);
        return socket;
    }

    private static void send(Socket socket, String text) throws IOException {
        try {
            OutputStream out = socket.getOutputStream();
            out.write(text.getBytes(StandardCharsets.US_ASCII));
            out.flush();
        } catch (SocketException hungUp) {
            // that is the server's right
            return;
        }
    }

    private static String firstLine(Socket socket) throws IOException {
        StringBuilder line = new StringBuilder();
        for (int c = socket.getInputStream().read();
                c >= 0 && c != '\r';
                c = socket.getInputStream().read()) {
            line.append((char) c);
        }
        return line.toString();
    }

    /** Whether the server has not ended a connection: reading finds nothing yet, rather than its end. */
    private static boolean isOpen(Socket socket) {
        try {
            socket.setSoTimeout(5);
            return socket.getInputStream().read() >= 0;
        } catch (SocketTimeoutException nothingYet) {
            return true;
        } catch (IOException ended) {
            return false;
        }
    }
}
