/** Sites, racks, shelves, mats and places, and the pictures of what lies on them. */
package warmshelf.shelf;
