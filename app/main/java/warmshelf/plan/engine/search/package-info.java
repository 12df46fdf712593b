/** Makes plans: first come, greedy, and a search for a better one; why a request was refused; how good a plan can get. */
package warmshelf.plan.engine.search;
