/**
 * Which place is free and warm enough for how long; stays, and the database as judge of them.
 *
 * <p><b>Double booking.</b> {@code quarter_day} has one row for each quarter of a place and day that is taken, with
 * those three as primary key. A stay writes its rows in the transaction that makes it, so two people can never hold
 * the same quarter, whatever the code believes. {@code SpaceJudge} looks first, to give a sentence with names;
 * {@code StayStore} turns the database's own refusal, which a race can still cause, into one as well. {@code
 * stay_within_place} keeps a stay inside one place.
 *
 * <p><b>Places.</b> {@code SpaceJudge} alone says what is in the way of a place: others ({@code Obstacle.Taken}),
 * days out of service, warmth. Boards, lists and offers read the surroundings as they stand ({@code
 * SurroundingsStore}); who saves holds the mat and asks the same judge again ({@code ClashStore}). {@code
 * LookAndSaveContract} walks many rooms and holds that both say the same. What lies on a mat out of service is given
 * other places by {@code DisplacedPlan}, taken by {@code MoveStore.moveAll}.
 *
 * <p><b>Temperature.</b> A mat has one set-point a day: {@code mat_day (mat_id, on_day, celsius)}. Each {@code
 * quarter_day} row on a mat carries its place's mat, the set-point and the band of what lies there. Three composite
 * keys tie them: {@code (place_id, mat_id)} to {@code place}, {@code (mat_id, on_day, celsius)} to {@code mat_day}
 * with {@code on update cascade}, and the check {@code round(celsius) between low_c and high_c}. So neither a new stay nor
 * a later change of the set-point can leave a tray at a warmth it cannot bear: changing {@code mat_day} cascades
 * into the rows, and the check refuses the one that does not fit. Bands are ranges of one number, so what lies
 * together on a mat has a common set-point exactly when every two of them overlap. A stay follows its mat day by day
 * ({@code StayWarmth}, {@code WarmDays}): where something else lies, where a coordinator has turned an empty mat
 * ({@code by_hand}) to what suits, and else at the set-point asked for; it lasts until the shares of its days make a
 * whole. Set-points are kept to a tenth of a degree Celsius, so that every whole degree Fahrenheit comes back as it
 * was typed; bands, and the season's search, know whole degrees. {@code Band}, {@code Thermostat} and that check judge
 * a set-point by the degree it counts as ({@code WholeDegree}): whoever reads 24 to 27 °C as 75 to 80 °F may type both
 * ends. A plan sets whole degrees; where a mat stands within that degree already, it stays as it stands.
 *
 * <p><b>Held racks.</b> An entry of pests or virus ({@code Problem.spreads}) holds the racks on which its sowing lay that
 * day ({@code rack_hold}), as long as it stands and until a coordinator clears them. {@code RackHolds} says what may not
 * leave such a rack, to {@code MoveJudge} and {@code MoveStore}, and to ticks ({@code SpaceAfterTick}); what has not begun
 * lies nowhere yet and is free to move. It also says what may not come to one, to {@code SpaceJudge} and ticks: nothing new, from
 * whatever day, as nobody knows when it will be cleared; what lies or is booked there already stays. So boards close the mats of
 * such racks, plans do without them, and places under their lights are offered to nobody. Quarantine shelves ({@code quarantine_shelf}) are left out of boards, offers and
 * plans, and take what a held rack gives up.
 *
 * <p><b>Light.</b> Some seed comes up in light only ({@code SeedLight}). Its request says so ({@code needs_light}), and the one
 * judge refuses it a mat that is known to be dark ({@code LightAbove.NONE}); of a mat of which nobody has said anything nothing is
 * refused, so that a group that says nothing goes on as before. It is asked where something is laid or carried to another mat,
 * never of what lies there already. A coordinator who sees to the light another way says so with the placing, which ends the need
 * ({@code RequestStore.lightOtherwise}, audited); a decision taken back brings it back. The season's search and its checker keep
 * the same rule.
 */
package warmshelf.allocation;
