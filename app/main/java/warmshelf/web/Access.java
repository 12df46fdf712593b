package warmshelf.web;

import static warmshelf.web.WebSentences.SAY;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import io.javalin.router.Endpoint;
import io.javalin.security.RouteRole;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Stands before every route: finds who asks, and lets through only those the route is for. */
final class Access {
    private static final Logger LOG = LoggerFactory.getLogger(Access.class);
    private static final String LOOKED = "warmshelf.looked";

    private final Doors doors;
    private final SessionCookie cookie;
    private final Uploads uploads;
    private final Set<String> forScripts;
    private final AddressedSites sites;

    Access(Doors doors, SessionCookie cookie, Uploads uploads, Set<String> forScripts, AddressedSites sites) {
        this.doors = doors;
        this.cookie = cookie;
        this.uploads = uploads;
        this.forScripts = forScripts;
        this.sites = sites;
    }

    void check(Context ctx) {
        Role role = onlyRole(ctx.routeRoles());
        if (role == Role.PROGRAM) {
            // No cookie is looked at, so that no page can be made to ask in its reader's name.
            return;
        }
        Optional<Visitor> visitor = identify(ctx);
        if (role == Role.ANYONE) {
            return;
        }
        if (visitor.isEmpty()) {
            turnAway(ctx);
            return;
        }
        if (visitor.get().tablet() != null && role != Role.TABLET) {
            LOG.info("tablet {} was refused {} {}", visitor.get().memberId(), ctx.method(), ctx.path());
            throw Refusal.forbidden(SAY.tabletMayOnlyTick());
        }
        try {
            refuseUnlessTheirs(ctx, role, visitor.get());
        } catch (Refusal refusal) {
            LOG.info("member {} was refused {} {}", visitor.get().memberId(), ctx.method(), ctx.path());
            throw refusal;
        }
        if (uploads.takes(ctx)) {
            uploads.receive(ctx);
        }
        if (isForScripts(ctx)) {
            refuseForms(ctx);
        } else if (ctx.method().equals(HandlerType.POST) && !carriesToken(ctx, visitor.get())) {
            LOG.info(
                    "a form without its token was refused to member {}: {}",
                    visitor.get().memberId(),
                    ctx.path());
            throw Refusal.forbidden(SAY.otherSignIn());
        }
    }

    private void refuseUnlessTheirs(Context ctx, Role role, Visitor visitor) {
        if (role == Role.COORDINATOR && !visitor.coordinator()) {
            throw Refusal.forbidden(visitor.reach().coordinates() ? SAY.forSiteCoordinators() : SAY.forCoordinators());
        }
        if (role == Role.SITE_COORDINATOR && !visitor.coordinator()) {
            SiteRight.require(visitor, sitesOfAddress(ctx));
        }
    }

    private Set<UUID> sitesOfAddress(Context ctx) {
        Endpoint endpoint = ctx.endpoints().matchedHttpEndpoint();
        return endpoint == null || !ctx.pathParamMap().containsKey("id")
                ? Set.of()
                : sites.of(endpoint.path, Respond.id(ctx, "id"));
    }

    /** Finds the visitor once a request; pages for strangers show their name too when they are signed in. */
    Optional<Visitor> identify(Context ctx) {
        if (ctx.attribute(LOOKED) == null) {
            ctx.attribute(LOOKED, true);
            String token = cookie.read(ctx);
            Optional<Visitor> found = token == null ? Optional.empty() : doors.visitor(token);
            found.ifPresent(visitor -> visitor.attachTo(ctx));
        }
        return Visitor.maybe(ctx);
    }

    /** The one role of a route. */
    static Role onlyRole(@Nullable Set<RouteRole> roles) {
        if (roles == null || roles.size() != 1 || !(roles.iterator().next() instanceof Role role)) {
            throw new IllegalStateException("each route names exactly one role, this one names " + roles);
        }
        return role;
    }

    private boolean isForScripts(Context ctx) {
        return ctx.method().equals(HandlerType.POST) && forScripts.contains(ctx.path());
    }

    /** No page of another site can send JSON without this server's leave, as it can a form. */
    private static void refuseForms(Context ctx) {
        String type = ctx.contentType();
        if (type == null || !type.toLowerCase(Locale.ROOT).startsWith("application/json")) {
            throw Refusal.of(HttpStatus.UNSUPPORTED_MEDIA_TYPE, SAY.jsonOnly());
        }
    }

    private void turnAway(Context ctx) {
        if (isForScripts(ctx)) {
            ctx.status(HttpStatus.UNAUTHORIZED).json(Map.of("signIn", true));
            ctx.skipRemainingHandlers();
            return;
        }
        boolean readsAPage =
                ctx.method().equals(HandlerType.GET) || ctx.method().equals(HandlerType.HEAD);
        if (Respond.wantsJson(ctx) || !readsAPage) {
            throw Refusal.of(HttpStatus.UNAUTHORIZED, SAY.signedOut());
        }
        String query = ctx.queryString();
        String wanted = ctx.path() + (query == null ? "" : "?" + query);
        ctx.redirect("/sign-in?then=" + URLEncoder.encode(wanted, StandardCharsets.UTF_8), HttpStatus.SEE_OTHER);
        ctx.skipRemainingHandlers();
    }

    private static boolean carriesToken(Context ctx, Visitor visitor) {
        String header = ctx.header("X-CSRF-Token");
        String given = header != null ? header : ctx.formParam("csrf");
        return given != null
                && MessageDigest.isEqual(
                        given.getBytes(StandardCharsets.UTF_8),
                        visitor.csrfToken().getBytes(StandardCharsets.UTF_8));
    }
}
