package warmshelf.web;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.channels.SelectableChannel;
import java.nio.channels.SocketChannel;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.io.SelectorManager;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Holds each address to so many open connections, so that one machine cannot take them all. A reverse proxy speaks for everybody
 * and is not counted.
 */
final class ConnectionsOfAddress implements SelectorManager.AcceptListener, Connection.Listener {
    private static final Logger LOG = LoggerFactory.getLogger(ConnectionsOfAddress.class);

    private final int most;
    private final Predicate<InetAddress> proxies;
    private final Map<InetAddress, Integer> open = new ConcurrentHashMap<>();
    private final Map<Connection, InetAddress> senders = new ConcurrentHashMap<>();

    ConnectionsOfAddress(int most, Predicate<InetAddress> proxies) {
        this.most = most;
        this.proxies = proxies;
    }

    @Override
    public void onAccepting(SelectableChannel channel) {
        InetAddress address = addressOf(channel);
        if (address != null && open.getOrDefault(address, 0) >= most && !proxies.test(address)) {
            try {
                channel.close();
            } catch (IOException alreadyGone) {
                LOG.debug("a connection too many could not be closed", alreadyGone);
            }
        }
    }

    @Override
    public void onOpened(Connection connection) {
        if (connection.getEndPoint().getRemoteSocketAddress() instanceof InetSocketAddress sender) {
            // remembered, because a closed connection does not know it any more
            senders.put(connection, sender.getAddress());
            open.merge(sender.getAddress(), 1, Integer::sum);
        }
    }

    @Override
    public void onClosed(Connection connection) {
        InetAddress sender = senders.remove(connection);
        if (sender != null) {
            open.computeIfPresent(sender, (address, now) -> now == 1 ? null : now - 1);
        }
    }

    private static @Nullable InetAddress addressOf(SelectableChannel channel) {
        try {
            return channel instanceof SocketChannel socket
                            && socket.getRemoteAddress() instanceof InetSocketAddress sender
                    ? sender.getAddress()
                    : null;
        } catch (IOException alreadyGone) {
            return null;
        }
    }
}
