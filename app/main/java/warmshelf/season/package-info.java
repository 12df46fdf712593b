/**
 * The turn of the season: what is not over is settled, the season is closed with its figures, the next one is opened; seasons that
 * were closed can be read.
 *
 * <p>{@code SettlementStore} closes, in one transaction with all that was settled; {@code SeasonTurnStore} opens, and takes both
 * back. Whether anything may be asked for is judged by {@code sowing.SeasonGateStore} alone.
 */
package warmshelf.season;
