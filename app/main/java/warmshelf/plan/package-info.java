/**
 * Season plans: run, looked at, changed by hand, published and undone; and what members are told of them.
 *
 * <p><b>Publications.</b> A plan is published in one transaction; what it moves or takes away is kept in {@code
 * season_plan_before}, so that an undo lays it there again where nobody else lies by then, and each set-point it
 * changes in {@code season_plan_warmth}, so that an undo turns the mats back, except on days that somebody has set
 * since or that something lying there needs. What has begun, or was given another place by hand, stays. Room that
 * comes free by an undo is held back ({@code freed_space.held_for_plan}): offered to nobody until a coordinator says
 * so or another plan is published. Whether a plan moves a stay is asked of {@code SeasonQuestion}, which compares
 * places and days.
 */
package warmshelf.plan;
