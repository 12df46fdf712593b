package warmshelf.seed;

import static warmshelf.seed.SeedSentences.SAY;

import java.util.UUID;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;

/**
 * A lot as a page shows it.
 *
 * @param crop the crop's name
 * @param owner whose it is, in words
 * @param left how many seeds are left and how many of them are spoken for, in words
 * @param age for example 'fresh', '3 years old'
 * @param source where it came from, in words
 * @param offered how many seeds anybody may take
 * @param inShort the share expected to come up, in tenths
 * @param expected the same with its range
 */
public record LotWords(
        UUID id,
        String crop,
        String variety,
        int seedYear,
        String owner,
        String left,
        String age,
        boolean treated,
        String source,
        int offered,
        String inShort,
        String expected,
        String note) {

    static LotWords of(LotBalance balance, LotEvidence evidence, CropCatalogue crops, int season) {
        Lot lot = balance.lot();
        Crop crop = crops.orUnlisted(lot.cropId());
        GerminationShare share = lot.share(crop, evidence.all(lot), season);
        return new LotWords(
                lot.id(),
                crop.name(),
                lot.variety(),
                lot.seedYear(),
                lot.ownerName() == null ? "The group’s" : lot.ownerName(),
                new BalanceWords(balance).left(),
                age(lot.ageIn(season)),
                lot.treated(),
                lot.source().words(),
                balance.offered(),
                SAY.inTen(Math.round(10 * share.mean())),
                inWords(share),
                lot.note());
    }

    private static String age(int years) {
        return SAY.age(years);
    }

    /** For example 'about 8 in 10 (likely 69 to 94 %)': the range holds the true share nine times in ten. */
    static String inWords(GerminationShare share) {
        ShareInterval range = share.interval(0.9);
        return SAY.aboutInTen(
                Math.round(10 * share.mean()), Math.round(100 * range.low()), Math.round(100 * range.high()));
    }
}
