/** Season plans: run, looked at, changed by hand, published and undone; and what members are told of them. */
package warmshelf.plan;
