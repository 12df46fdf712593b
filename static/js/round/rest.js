// The shelves one comes to last stand in <noscript>, which costs a phone nothing to read. They are unfolded here, one at a time
// while nobody waits for anything, so that the first shelves can be ticked at once, however long the round.
(() => {
  const round = document.getElementById("round");
  if (!round) return;
  const rests = [...round.querySelectorAll("noscript.round__rest")];
  const whenIdle = self.requestIdleCallback ?? ((work) => setTimeout(work, 1));

  const rest = {
    waits: rests.length > 0,
    unfolded: () => {},

    /** Unfolds everything that is left, for whoever needs to know the whole round. */
    all() {
      while (rests.length > 0) one();
    },

    /** Unfolds the rest bit by bit, and says when all is there. */
    begin(then) {
      if (!rest.waits) return;
      if (rests.length > 0) {
        one();
        whenIdle(() => rest.begin(then));
      } else {
        rest.waits = false;
        then();
      }
    },
  };

  function one() {
    const folded = rests.shift();
    const shelf = document.createRange().createContextualFragment(folded.textContent);
    const lists = [...shelf.querySelectorAll(".round__list")];
    folded.replaceWith(shelf);
    if (rests.length === 0) document.getElementById("round-rest")?.remove();
    lists.forEach(rest.unfolded);
  }

  self.roundRest = rest;
})();
