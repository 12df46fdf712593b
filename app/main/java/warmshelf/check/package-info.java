/**
 * What is due today, the round, ticks, thermometer readings, mats too hot or too cold.
 *
 * <p><b>Ticks from a phone</b> come by {@code POST /round/entries}, up to 200 at once, in one transaction with a
 * savepoint each; then {@code Database.flush()}, then one answer an entry. They are ordered by when they were seen:
 * {@code TickJudge} judges a late one by what had been seen by then and what its page could know ({@code pageAt}),
 * {@code Progress} folds by seen time, and of two that tell of the same the one seen later counts. {@code ClockSkew}
 * puts a phone's clock right by the {@code sentAt} it sends along. The address takes no token, because a tick may be
 * older than the sign-in: {@code Pages.forScripts} asks for JSON and for a request of our own site instead, and
 * answers 401 as JSON. {@code static/js/round/kept.js} is the store on the phone, {@code send.js} the one sender
 * over all tabs and the worker (a lock, else a lease), {@code show.js} what is seen of it, {@code walk.js} the
 * thumb's comforts, {@code start.js} ties them together. {@code static/js/worker.js} keeps the shell, the how-tos
 * that were read and one member's Today; {@code PhoneAppPages} puts its version (a hash of all it keeps) and list
 * before it. A new worker waits for the sender's lock. A step {@code undone} takes an entry back; it counts for
 * nothing itself.
 *
 * <p><b>The page of the round</b> is kept small for a poor line. What to do is said once a page ({@code HowTo}) and
 * shown at the check by {@code walk.js}; the forms share one random number a page, of which {@code EntryIds} makes
 * an entry's id of the day, so that a page left open overnight tells of another day; from the fifth shelf on the items stand in {@code <noscript>}, read in full where there are no
 * scripts and unfolded bit by bit by {@code rest.js} where there are. {@code Respond.unlessKept} answers 304 to the
 * worker, which says which page it keeps; the browser itself keeps none. {@code web/Packing} says how answers are
 * packed.
 *
 * <p><b>Entries</b> are only added. The phone makes the id, which is the primary key: sent twice, kept once. A
 * correction is a new entry that supersedes. {@code Progress} folds entries into a stage; {@code sowing.stage}
 * repeats it for queries and is written in the same transaction. The same look of the same person and day counts
 * once ({@code TickJudge.repeats}): the phone is told under which entry it stands, so that its photo goes there and
 * its undo takes that one back. {@code ChecksDue} says of a look whether it is done for the day.
 *
 * <p><b>Problems.</b> {@code NotedProblem} tells from entries and answers ({@code problem_answer}) which problems
 * are open at a sowing and who may answer; {@code RoundStore} keeps them with the round, {@code Moments} tells
 * growers in the morning. The forms on Today that answer carry no random name, or the page would never be the same
 * twice; the primary key counts them once. Of what spreads {@code HeldRackStore} tells everybody whose sowings lie on that
 * rack, or come there within a week.
 */
package warmshelf.check;
