/** Which place is free and warm enough for how long; stays, and the database as judge of them. */
package warmshelf.allocation;
