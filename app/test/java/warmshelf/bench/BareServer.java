package warmshelf.bench;

import io.javalin.Javalin;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import warmshelf.web.Packing;

/** The yardstick: the same server with the same settings and nothing behind it. */
final class BareServer {
    private BareServer() {}

    /** Serves '/constant', a few bytes, and '/page', the bytes of a file. */
    public static void main(String[] arguments) throws IOException {
        byte[] page = Files.readAllBytes(Path.of(arguments[1]));
        Javalin.create(config -> {
                    config.startup.showJavalinBanner = false;
                    config.startup.showOldJavalinVersionWarning = false;
                    config.http.compressionStrategy = Packing.strategy();
                    config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
                    config.routes.get("/constant", ctx -> ctx.html("<p>Nothing to do today.</p>"));
                    config.routes.get(
                            "/page",
                            ctx -> ctx.contentType("text/html; charset=utf-8").result(page));
                })
                .start("127.0.0.1", Integer.parseInt(arguments[0]));
    }
}
