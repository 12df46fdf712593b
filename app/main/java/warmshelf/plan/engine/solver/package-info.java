/** A published solver in a process of its own, which may die at any time without harm. */
package warmshelf.plan.engine.solver;
