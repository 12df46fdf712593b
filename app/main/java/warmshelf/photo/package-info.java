/**
 * Pictures of what was seen, kept with the entry that tells of it, and of packets, kept with their lot: made small,
 * and freed of all they tell beside the picture.
 *
 * <p><b>Photos</b> are made small twice: by {@code photo.js} on the phone, so that they can wait there and travel,
 * and by {@code photo/Shrink} on the server, which trusts nobody: it looks at the measures before it makes room,
 * decodes, turns upright, and writes a new JPEG without anything beside the picture. A photo goes by itself after
 * its tick is stored, and leaves the phone only once the server has it or has said in its own words that it never
 * will.
 */
package warmshelf.photo;
