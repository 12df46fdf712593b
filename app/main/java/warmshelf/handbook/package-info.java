/** The handbook for whoever runs the group: what is set up how, what the commands do, and what the data are. */
package warmshelf.handbook;
