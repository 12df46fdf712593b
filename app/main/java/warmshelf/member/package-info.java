/** The people of the group: joining by link, signing in, and who may do what. */
package warmshelf.member;
