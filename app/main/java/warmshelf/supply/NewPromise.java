package warmshelf.supply;

/**
 * So much of something as it is promised.
 *
 * @param amount in millilitres or pieces
 * @param there whether it is the group's own and in its cupboard already
 */
public record NewPromise(SupplyItem item, double amount, boolean there, String note) {}
