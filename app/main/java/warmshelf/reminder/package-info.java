/** What is to be done and who looks, told where people see it: a calendar feed, and letters by e-mail in the morning or evening. */
package warmshelf.reminder;
