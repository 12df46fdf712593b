/** The group and its people: opening it, what is set for everyone, sign-in, invitations and one's own settings. */
package warmshelf.group;
