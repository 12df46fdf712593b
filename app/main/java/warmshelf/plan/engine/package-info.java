/** The season's allocation: everyone's requests on the group's mats at once, and an independent judge of such a plan. */
package warmshelf.plan.engine;
