/** What a season's sowings still need of compost, covering, pots and the like, and who brings it. */
package warmshelf.supply;
