package warmshelf.web;

import io.javalin.security.RouteRole;

/** Who may use a route. Every route names exactly one; a route without one is a fault at start. */
public enum Role implements RouteRole {
    /** No sign-in needed: sign-in itself, links, health, styles. Each use says why. */
    ANYONE,
    /** Any signed-in member. */
    MEMBER,
    /** A tablet at a rack, which may use these routes and no others; any signed-in member may, too. */
    TABLET,
    /** A script of a member's, by a token of its own; a browser's sign-in opens nothing there. The room of programs judges it. */
    PROGRAM,
    /**
     * Whoever coordinates the group or one of its sites. What the address names has to be at a site of theirs, which the access
     * check asks; what a form names besides, the handler asks by {@link SiteRight}.
     */
    SITE_COORDINATOR,
    /** A member who also runs people, season and settings: a coordinator of the whole group. */
    COORDINATOR
}
