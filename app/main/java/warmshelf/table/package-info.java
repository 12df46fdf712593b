/**
 * Tables as files with cells between separators (RFC 4180): the one place where they are written for spreadsheets and programs,
 * and where those that people send are told, opened and read row by row. Knows nothing of what stands in them.
 */
package warmshelf.table;
