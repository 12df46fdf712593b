/**
 * The group's data as tables that people take out and bring in. What goes out ({@code OutgoingTable}) is written while it is read.
 * What comes in is sent as a file, judged row by row by the same forms as what is typed on pages, shown, and taken in only then: all
 * rows in one transaction, or none. Until then the file lies in a folder of the running program and nothing of it is in the database.
 */
package warmshelf.exchange;
