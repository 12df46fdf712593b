/**
 * Crops, and how their seed answers to temperature, as published and as learned here; what coordinators write over
 * and beside it.
 *
 * <p><b>Crops.</b> {@code CropCatalogue} is asked everywhere and always answers with what holds now: the reference,
 * over it what coordinators wrote ({@code OwnCropStore}: what is written through it shows at once, what others write
 * within two seconds). {@code ofVariety} puts a variety's days in place of its crop's; {@code SowingStore} and
 * {@code AskPlanView} ask that way, so every date follows. Commands have no group and use {@code bundled()}.
 *
 * <p><b>Hazards</b> are codes: of a crop ({@code CropHazard}, ticked in its form, a row of {@code crop-hazards.csv}) and
 * of a treated lot. {@code Caution.of} says which caution they ask for at which step; no word that anybody wrote
 * decides. {@code NoLogicReadsSentencesTest} looks for code that reads English: what the program needs to know is a
 * column of the reference files or an enum, and the sources' own words stay in their notes.
 *
 * <p><b>Second reading.</b> {@code CropSources} has what extension services say of each crop, source by source
 * ({@code crop-sources.csv}); pages and the reason of a sowing day show the range where it goes beyond the crop's figure.
 */
package warmshelf.crop;
