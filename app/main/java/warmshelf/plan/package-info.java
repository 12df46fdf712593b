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
 *
 * <p><b>Why somebody has no place</b> is kept as codes with their figures in SI ({@code RefusedJson}), in plans and in what
 * members are told, and put into words for each reader ({@code engine.NoPlaceReason}, {@code engine.PlaceChange}). What a plan
 * of an earlier version kept in sentences is shown as it was written.
 *
 * <p><b>A mat out of service.</b> {@code DisplacedPlan} asks the same search, while the page waits, where the stays of that mat
 * could lie; everything else is fixed, the effort is counted, and no child process is started. The bound is asked of an easier question,
 * where each stay lasts as long as at its best set-point, so that 'proven' also holds for stays under which a mat is turned. Each
 * place found is laid anew by the counter's rules beside all the others, because those keep the mats as they are set, and put into an
 * order in which one can be taken after another. First fit in three orders stays as what the plan is held against. Light and circuits
 * are not asked: a place under a light follows its stay, as with any move.
 */
package warmshelf.plan;
