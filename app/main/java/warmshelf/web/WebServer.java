package warmshelf.web;

import static warmshelf.web.WebSentences.SAY;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.ContentTooLargeResponse;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import io.javalin.router.Endpoint;
import io.javalin.security.Roles;
import io.javalin.util.JavalinException;
import java.time.Clock;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The running server: every feature's routes behind one access check, one renderer and one set of error pages. */
public final class WebServer implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(WebServer.class);

    private static final long LARGEST_REQUEST = 1_000_000;
    // A browser shows the answer to an over-large form only if its sending was not cut off, so that much is read and
    // dropped.
    private static final long READ_AND_DROPPED = 32_000_000;

    private final Javalin javalin;
    private final List<Pages> pages;
    private final UploadFolder folder;

    private WebServer(Javalin javalin, List<Pages> pages, UploadFolder folder) {
        this.javalin = javalin;
        this.pages = pages;
        this.folder = folder;
    }

    public static WebServer start(
            WebSettings settings,
            Doors doors,
            AddressedSites sites,
            Submissions submissions,
            Clock clock,
            List<Pages> pages) {
        UploadFolder folder = UploadFolder.open();
        try {
            return start(settings, doors, sites, submissions, clock, pages, folder);
        } catch (RuntimeException notStarted) {
            pages.forEach(Pages::stop);
            folder.close();
            throw notStarted;
        }
    }

    private static WebServer start(
            WebSettings settings,
            Doors doors,
            AddressedSites sites,
            Submissions submissions,
            Clock clock,
            List<Pages> pages,
            UploadFolder folder) {
        Set<String> addresses =
                pages.stream().flatMap(page -> page.uploads().stream()).collect(Collectors.toSet());
        Uploads uploads = new Uploads(addresses, folder.path());
        Javalin javalin = Javalin.create(config -> {
            config.router.handlerWrapper(new SubmissionGuard(submissions)::before);
            configure(config, settings, doors, sites, clock, pages, uploads);
        });
        javalin.start();
        return new WebServer(javalin, pages, folder);
    }

    public int port() {
        return javalin.port();
    }

    /** Every route but those of styles and pictures, with who may use it. */
    public List<RouteRight> rights() {
        return javalin.unsafe.internalRouter.allHttpHandlers().stream()
                .map(parsed -> parsed.endpoint)
                .filter(endpoint -> endpoint.method.isHttpMethod())
                .map(endpoint -> new RouteRight(endpoint.method.name(), endpoint.path, roleOf(endpoint)))
                .toList();
    }

    /** Finishes what is being answered, then stops; what takes longer than the server waits stays unanswered. */
    @Override
    public void close() {
        try {
            javalin.stop();
        } catch (JavalinException tooSlow) {
            LOG.warn("stopped while something was still being answered: {}", String.valueOf(tooSlow.getMessage()));
        }
        pages.forEach(Pages::stop);
        folder.close();
    }

    private static void configure(
            JavalinConfig config,
            WebSettings settings,
            Doors doors,
            AddressedSites sites,
            Clock clock,
            List<Pages> pages,
            Uploads uploads) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.http.maxRequestSize = LARGEST_REQUEST;
        config.http.prefer405over404 = true;
        config.http.compressionStrategy = Packing.strategy();
        config.jetty.multipartConfig.maxTotalRequestSize(1, SizeUnit.MB);
        config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
        Sockets.setUp(config.jetty, settings, LARGEST_REQUEST, uploads.addresses());

        Assets assets = new Assets();
        Access access = new Access(
                doors,
                new SessionCookie(settings.https()),
                uploads,
                pages.stream().flatMap(page -> page.forScripts().stream()).collect(Collectors.toSet()),
                sites);
        SecurityHeaders headers = new SecurityHeaders(settings.https());
        KnownHosts hosts = new KnownHosts(settings.baseUrl());
        CrossSite crossSite = new CrossSite(settings.baseUrl());
        config.fileRenderer(new Renderer(assets, doors, clock, settings.zone(), pages));
        config.requestLogger.http((ctx, millis) -> RequestName.answered(ctx, millis, pages));
        config.routes.before(ctx -> {
            RequestName.give(ctx);
            ctx.res().setCharacterEncoding("UTF-8");
            headers.put(ctx);
            uploads.lendFolder(ctx);
            Notice.overHttps(ctx, settings.https());
            refuseUnknownHost(ctx, hosts);
            if (!uploads.takes(ctx)) {
                refuseTooLarge(ctx);
            }
            refuseCrossSite(ctx, crossSite);
        });
        config.routes.beforeMatched(ctx -> receive(ctx, uploads));
        config.routes.beforeMatched(access::check);
        new ErrorPages(access).register(config.routes);
        // Anyone: the sign-in page wears the same styles.
        config.routes.get("/static/{hash}/<file>", assets::serve, Role.ANYONE);
        new PhoneAppPages(assets).register(config.routes);
        pages.forEach(page -> page.register(config.routes));
        finishRoutes(config, sites);
    }

    /** Holds every route to naming its role, those of coordinators of a site to a known thing, and lets HEAD answer as GET does, access check included. */
    private static void finishRoutes(JavalinConfig config, AddressedSites sites) {
        List<Endpoint> endpoints = config.unsafe.internalRouter.allHttpHandlers().stream()
                .map(parsed -> parsed.endpoint)
                .filter(endpoint -> endpoint.method.isHttpMethod())
                .toList();
        for (Endpoint endpoint : endpoints) {
            Role role = roleOf(endpoint);
            if (role == Role.SITE_COORDINATOR && !sites.knows(endpoint.path)) {
                throw new IllegalStateException(
                        endpoint.method + " " + endpoint.path + ": nobody can say at which site that is");
            }
            if (HandlerType.GET.equals(endpoint.method)) {
                config.routes.head(endpoint.path, endpoint.handler, role);
            }
        }
    }

    private static Role roleOf(Endpoint endpoint) {
        Roles roles = endpoint.metadata(Roles.class);
        try {
            return Access.onlyRole(roles == null ? null : roles.getRoles());
        } catch (IllegalStateException noSingleRole) {
            throw new IllegalStateException(endpoint.method + " " + endpoint.path + ": " + noSingleRole.getMessage());
        }
    }

    /** Large files are received only after it is known who sends them. */
    private static void receive(Context ctx, Uploads uploads) {
        if (ctx.method().equals(HandlerType.POST)) {
            SentBody.refuseUnknownCharset(ctx);
            if (!uploads.takes(ctx)) {
                SentBody.receive(ctx);
            }
        }
    }

    private static void refuseTooLarge(Context ctx) {
        if (ctx.req().getContentLengthLong() > LARGEST_REQUEST) {
            Uploads.drop(ctx, READ_AND_DROPPED);
            throw new ContentTooLargeResponse();
        }
    }

    /** Links are made from the name that a browser used, so that it must be one of ours. */
    private static void refuseUnknownHost(Context ctx, KnownHosts hosts) {
        String host = ctx.header("Host");
        if (host != null && !hosts.know(host)) {
            throw Refusal.of(HttpStatus.MISDIRECTED_REQUEST, SAY.otherHost(host));
        }
    }

    private static void refuseCrossSite(Context ctx, CrossSite crossSite) {
        boolean reads = ctx.method().equals(HandlerType.GET) || ctx.method().equals(HandlerType.HEAD);
        if (!reads && crossSite.asks(ctx.header("Sec-Fetch-Site"), ctx.header("Origin"), ctx.header("Host"))) {
            throw Refusal.forbidden(SAY.otherSite());
        }
    }
}
