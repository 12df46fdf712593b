/** Notices on phones by web push: keys, addresses, what is laid ready, and how it is sent (RFC 8030, RFC 8291, RFC 8292). */
package warmshelf.reminder.push;
