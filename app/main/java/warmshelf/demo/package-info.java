/** The demo group: invented people and seed, put in through the features' own doors, day by day up to today. */
package warmshelf.demo;
