/** Pictures of what was seen, kept with the entry that tells of it, and of packets, kept with their lot: made small, and freed of all they tell beside the picture. */
package warmshelf.photo;
