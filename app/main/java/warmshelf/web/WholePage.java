package warmshelf.web;

/** A page whose template reads everything under the one name 'page'. */
public record WholePage(Record page) {}
