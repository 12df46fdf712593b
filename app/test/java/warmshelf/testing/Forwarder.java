package warmshelf.testing;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** Stands between a program and a server, so that a test can take the server away and give it back. */
public final class Forwarder implements AutoCloseable {
    private final String host;
    private final int port;
    private final ServerSocket entrance;
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();
    private volatile boolean away;

    private Forwarder(String host, int port, ServerSocket entrance) {
        this.host = host;
        this.port = port;
        this.entrance = entrance;
    }

    public static Forwarder to(String host, int port) throws IOException {
        Forwarder forwarder = new Forwarder(host, port, new ServerSocket(0, 50, InetAddress.getLoopbackAddress()));
        start(forwarder::accept);
        return forwarder;
    }

    public int port() {
        return entrance.getLocalPort();
    }

    /** Ends all connections and takes no more. */
    public void takeAway() {
        away = true;
        open.forEach(Forwarder::end);
    }

    public void giveBack() {
        away = false;
    }

    @Override
    public void close() throws IOException {
        entrance.close();
        open.forEach(Forwarder::end);
    }

    private void accept() {
        try {
            while (true) {
                Socket in = entrance.accept();
                if (away) {
                    in.close();
                } else {
                    join(in, new Socket(host, port));
                }
            }
        } catch (IOException closed) {
            // the test has ended
            return;
        }
    }

    private void join(Socket in, Socket out) {
        open.add(in);
        open.add(out);
        if (away) {
            // taken away between the knock and the door
            end(in);
            end(out);
        }
        start(() -> copy(in, out));
        start(() -> copy(out, in));
    }

    private void copy(Socket from, Socket to) {
        try (InputStream source = from.getInputStream();
                OutputStream target = to.getOutputStream()) {
            source.transferTo(target);
        } catch (IOException ended) {
            end(from);
        } finally {
            end(to);
            open.remove(from);
        }
    }

    private static void end(Socket socket) {
        try {
            socket.close();
        } catch (IOException alreadyGone) {
            throw new IllegalStateException(alreadyGone);
        }
    }

    private static void start(Runnable work) {
        Thread thread = new Thread(work, "forwarder");
        thread.setDaemon(true);
        thread.start();
    }
}
