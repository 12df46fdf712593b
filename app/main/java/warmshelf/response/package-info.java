/** Each crop's germination curve with the group's own sowings on it. */
package warmshelf.response;
