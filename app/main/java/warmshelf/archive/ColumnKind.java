package warmshelf.archive;

/** What a column holds, and so how it is written: the same in every database. */
enum ColumnKind {
    /** A UUID, in small letters. */
    KEY,
    TEXT,
    WHOLE_NUMBER,
    /** With as many decimals as its column keeps. */
    DECIMAL,
    /** A double, with as few digits as tell it from every other. */
    REAL,
    YES_NO,
    /** ISO 8601, such as 2027-03-01. */
    DAY,
    /** ISO 8601 in UTC, such as 2027-03-01T14:00:00Z. */
    MOMENT,
    /** In the row stands the name of the part that holds it; no text where there is none. */
    PICTURE
}
