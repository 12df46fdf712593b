package warmshelf.jar;

import com.sun.tools.attach.AttachNotSupportedException;
import com.sun.tools.attach.VirtualMachine;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.management.JMException;
import javax.management.MBeanServerConnection;
import javax.management.ObjectName;
import javax.management.remote.JMXConnector;
import javax.management.remote.JMXConnectorFactory;
import javax.management.remote.JMXServiceURL;
import warmshelf.testing.Browser;

/** {@code demo} of the packaged jar as a process of its own, whose pool of connections can be told to retire them all. */
final class JarDemo implements AutoCloseable {
    private static final int LINKS = 3;
    private static final String LINK = "/in/";

    private final Process process;
    private final List<String> links;

    private JarDemo(Process process, List<String> links) {
        this.process = process;
        this.links = links;
    }

    /** Starts it and waits until it has printed its links. */
    static JarDemo start(Path folder) {
        try {
            Path pool = Files.writeString(folder.resolve("pool.properties"), "registerMbeans=true\n");
            ProcessBuilder builder = JarRun.command(List.of("demo", "--port", "0"));
            builder.command().add(1, "-Dhikaricp.configurationFile=" + pool);
            Process process =
                    builder.redirectError(folder.resolve("err.txt").toFile()).start();
            List<String> links = new ArrayList<>();
            BufferedReader out =
                    new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
            for (String line = out.readLine(); line != null && links.size() < LINKS; line = out.readLine()) {
                if (line.contains(LINK)) {
                    links.add(line.strip());
                }
                if (links.size() == LINKS) {
                    return new JarDemo(process, links);
                }
            }
            throw new AssertionError(
                    "the demo ended without its links: " + Files.readString(folder.resolve("err.txt")));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    Browser member() {
        return signedIn(links.get(0));
    }

    Browser coordinator() {
        return signedIn(links.get(1));
    }

    private static Browser signedIn(String link) {
        URI address = URI.create(link);
        Browser browser = Browser.at("http://127.0.0.1:" + address.getPort());
        browser.post(address.getPath());
        return browser;
    }

    /** Does at once what happens to every connection after half an hour. */
    // The address is that of the process just started, told by itself.
    @SuppressWarnings("BanJNDI")
    void retireConnections() {
        try {
            VirtualMachine machine = VirtualMachine.attach(String.valueOf(process.pid()));
            try (JMXConnector connector =
                    JMXConnectorFactory.connect(new JMXServiceURL(machine.startLocalManagementAgent()))) {
                MBeanServerConnection beans = connector.getMBeanServerConnection();
                for (ObjectName pool : beans.queryNames(new ObjectName("com.zaxxer.hikari:type=Pool (*)"), null)) {
                    beans.invoke(pool, "softEvictConnections", new Object[0], new String[0]);
                }
            } finally {
                machine.detach();
            }
        } catch (IOException | JMException | AttachNotSupportedException notReached) {
            throw new AssertionError("the pool could not be told to retire its connections", notReached);
        }
    }

    @Override
    public void close() {
        process.toHandle().destroy();
        try {
            if (!process.waitFor(30, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new AssertionError("the demo did not stop within half a minute");
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }
}
