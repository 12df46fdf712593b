/**
 * The seed box: lots, their age and tests, how many seeds to sow, and who may use whose.
 *
 * <p><b>Seed.</b> {@code LotBalance} says of a lot how many seeds are counted, spoken for by sowings not sown yet
 * ({@code SeedHoldStore}, told by {@code LotUseStore}: the stages and requests decide, nothing is kept twice), kept
 * back, offered, and free for a member. Whatever uses seed up or promises it asks {@code LotBalanceStore.held},
 * which locks the lot's row. {@code SeedClaimStore} holds seed for a sowing, again for one that comes back, and
 * takes owners' answers ({@code lot_request}). A sowing whose seed was refused or is gone stays, holds none, and
 * leads to another lot.
 */
package warmshelf.seed;
