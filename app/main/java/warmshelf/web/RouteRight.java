package warmshelf.web;

/** One address, one kind of request, and who may make it. */
public record RouteRight(String method, String path, Role role) {}
