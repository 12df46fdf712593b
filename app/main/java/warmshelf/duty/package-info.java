/** Who looks on which day at which site: willingness, a fair rota, stand-ins, the set hour and swaps. */
package warmshelf.duty;
