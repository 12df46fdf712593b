package warmshelf.finding.trial;

import org.jspecify.annotations.Nullable;
import warmshelf.allocation.SpaceRequest;
import warmshelf.sowing.Sowing;

/**
 * One way of a block, ready to be asked for.
 *
 * @param request for its place on a mat; null: it lies in a room
 */
public record PlannedWay(
        TrialWay way, Sowing sowing, @Nullable SpaceRequest request) {}
