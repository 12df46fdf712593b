/** The one way in which stores and cores say yes or no; small, because every room builds on it. */
package warmshelf.decision;
