// Walking the round with one thumb: counting up and down, one thing on a screen, a whole shelf at once.
(() => {
  const round = document.getElementById("round");
  if (!round) return;
  const { element } = self.roundShow;
  const VIEW = "warmshelf.round-view";
  const viewLink = document.getElementById("round-view");
  const isOneFromServer = !document.getElementById("round-elsewhere");
  let bar = null;
  let before = null;
  let steps = null;
  let now = 0;

  const items = () => [...round.querySelectorAll(".round__item")];
  const isDone = (item) => item.classList.contains("round__item--done");
  const isOpen = (item) =>
    !isDone(item) &&
    [...item.querySelectorAll("form.round__do")].some((form) => !(form.closest(".round__check") ?? form).hidden);

  // ---- counts

  function stepper(input) {
    if (input.previousElementSibling?.classList.contains("round__step")) return;
    const about = input.labels[0].textContent.trim() + ", " + input.closest("[data-title]").dataset.title;
    for (const [sign, by, words] of [["−", -1, "One fewer"], ["+", 1, "One more"]]) {
      const made = element("button", "button button--plain round__step", sign);
      made.type = "button";
      made.setAttribute("aria-label", words + ": " + about);
      made.addEventListener("click", () => {
        const next = (parseInt(input.value, 10) || 0) + by;
        input.value = String(Math.max(0, Math.min(next, Number(input.dataset.most))));
        input.dispatchEvent(new Event("input"));
      });
      if (by < 0) input.before(made);
      else input.after(made);
    }
    if (input.dataset.kept) oneButton(input);
  }

  /** Of 'Nothing new' and 'Keep 5 up' the one stands there that is true of the count. */
  function oneButton(input) {
    const nothing = input.form.elements.nothing;
    const keep = input.parentElement.querySelector("button[type=submit]");
    const choose = () => {
      const isNew = input.value.trim() !== "" && input.value.trim() !== nothing.value;
      nothing.hidden = isNew;
      keep.hidden = !isNew;
      keep.firstChild.textContent = `Keep ${input.value.trim()} ${input.dataset.kept}`;
    };
    keep.classList.remove("button--plain");
    keep.querySelector(".hidden-words").remove();
    input.addEventListener("input", choose);
    choose();
  }

  /** What was counted at an item and is taken back stands there no more. */
  function asBefore(item) {
    for (const input of item.querySelectorAll?.(".round__count") ?? []) {
      input.value = input.defaultValue;
      input.dispatchEvent(new Event("input"));
    }
  }

  /** An item says its id and title once, for the wire's sake; the scripts ask for them in many places. */
  function name(item) {
    item.dataset.sowing = item.id.slice("s-".length);
    item.dataset.title = item.querySelector(".round__title").textContent;
  }

  function enhance(within) {
    if (within.matches("li.round__item")) name(within);
    within.querySelectorAll("li.round__item").forEach(name);
    within.querySelectorAll(".round__count").forEach(stepper);
    within.querySelectorAll(".round__how").forEach((how) => how.setAttribute("aria-expanded", "false"));
  }

  /** Shows what to do at the check itself, or folds it away again. */
  function tellHow(how) {
    const isTold = how.getAttribute("aria-expanded") === "true";
    how.setAttribute("aria-expanded", String(!isTold));
    if (isTold) return how.parentElement.nextElementSibling.remove();
    const told = element("div", "round__told");
    told.append(...document.querySelector(how.hash).cloneNode(true).childNodes);
    // the check has said already what it is
    told.querySelector("strong").remove();
    return how.parentElement.after(told);
  }

  // ---- how much is left

  /** Says how much is left, and counts what waits on this phone as done: the same things as the bar counts. */
  function sayCounts() {
    if (self.roundRest.waits) return;
    const said = document.getElementById("round-count");
    const all = items();
    let open = all.filter(isOpen).length;
    let done = all.length - open;
    if (isOneFromServer) {
      // of the others the page itself knows
      const closed = all.some((item) => !isOpen(item) && !isDone(item)) ? 1 : 0;
      open = Number(said.dataset.open) - closed;
      done = Number(said.dataset.done) + closed;
    }
    said.textContent = `${open} to do, ${done} done`;
    const progress = round.querySelector("progress");
    if (!progress) return;
    progress.max = open + done;
    progress.value = done;
  }

  // ---- a whole shelf

  const nothings = (list) =>
    [...list.querySelectorAll("button[name=nothing]")].filter((button) => !button.hidden && !button.closest(".round__check").hidden && isOpen(button.closest(".round__item")));

  function offerShelf(list) {
    const offer = element("div", "round__all actions");
    list.before(offer);
    let asks = false;
    const draw = (sure) => {
      asks = sure;
      const open = nothings(list);
      const words = open.every((button) => button.value === "0") ? "nothing yet" : "nothing new";
      const said = sure ? `Yes, ${words} at all ${open.length}` : `All of this shelf: ${words}`;
      offer.hidden = open.length < 2;
      if (offer.hidden) return offer.replaceChildren();
      // whoever stands on it already stays on it
      if (offer.firstChild?.textContent === said) return;
      const press = element("button", "button button--plain", said);
      press.type = "button";
      press.addEventListener("click", () => {
        if (!sure) return draw(true);
        self.roundKeep(nothings(list).map((button) => [button.form, button]));
        return draw(false);
      });
      offer.replaceChildren(press);
      if (sure) {
        const no = element("button", "button button--plain", "No");
        no.type = "button";
        no.addEventListener("click", () => draw(false));
        offer.append(no);
        press.focus();
      }
    };
    draw(false);
    round.addEventListener("round-shown", () => draw(asks));
  }

  // ---- one on a screen, or the list

  function remembered() {
    try {
      return localStorage.getItem(VIEW);
    } catch {
      return null;
    }
  }

  function remember(view) {
    try {
      localStorage.setItem(VIEW, view);
    } catch {
      // a browser that keeps nothing shows the list next time
    }
  }

  function goTo(index, focus) {
    const all = items();
    now = (index + all.length) % all.length;
    all.forEach((item, at) => item.classList.toggle("round__item--now", at === now));
    bar.querySelector(".round__where").textContent = `${now + 1} of ${all.length}${titleOf(all[now])}`;
    sayCounts();
    if (focus) {
      all[now].tabIndex = -1;
      all[now].focus({ preventScroll: true });
      scrollTo(0, 0);
    }
  }

  function titleOf(item) {
    const titles = [...round.querySelectorAll(".round__shelf, .round__site")].filter(
      (title) => title.compareDocumentPosition(item) & Node.DOCUMENT_POSITION_FOLLOWING,
    );
    return titles.length ? ": " + titles[titles.length - 1].textContent.trim().replace(/\s+/g, " ") : "";
  }

  function pressing(words, go) {
    const made = element("button", "button button--plain", words);
    made.type = "button";
    made.addEventListener("click", go);
    return made;
  }

  function makeBar() {
    bar = element("div", "round__bar");
    const progress = element("progress");
    progress.setAttribute("aria-label", "Done");
    const list = pressing("List", () => turn(false));
    list.className = "nav-button change";
    bar.append(element("p", "round__where", " "), list, progress);
    before = element("p", "quiet");
    round.prepend(bar, before);
    steps = element("div", "round__steps actions");
    steps.append(pressing("One back", () => goTo(now - 1, true)), pressing("Later", () => goTo(now + 1, true)));
    round.append(steps);
  }

  function turn(one) {
    remember(one ? "one" : "list");
    view(one);
  }

  function view(one) {
    if (one) self.roundRest.all();
    if (one && !bar) makeBar();
    round.classList.toggle("round--one", one);
    document.getElementById("main").classList.toggle("page--one", one);
    for (const each of bar ? [bar, before, steps] : []) each.hidden = !one;
    viewLink.textContent = one ? "All as a list" : "One at a time";
    if (one) goTo(Math.max(0, items().findIndex(isOpen)), false);
    else round.scrollIntoView();
  }

  /** Once a check is kept the next card comes by itself; what was kept stands in one line above it. */
  function goOn(tick, isUndoable) {
    if (!bar || bar.hidden || isOpen(items()[now])) return false;
    before.replaceChildren(`${tick.title}: ${tick.words}. `);
    if (isUndoable) {
      const undo = pressing("Undo", () => {
        before.replaceChildren();
        goTo(items().findIndex((item) => (item.dataset.sowing ?? item.dataset.mat) === tick.subject), true);
      });
      undo.className = "nav-button change";
      undo.dataset.act = "undo";
      undo.dataset.of = tick.id;
      undo.append(element("span", "hidden-words", ": " + tick.title));
      before.append(undo);
    }
    nextOpen();
    return true;
  }

  /** Leads to the next thing to do after the one that is in use, going round to the start. */
  function nextOpen() {
    self.roundRest.all();
    const all = items();
    const from = round.classList.contains("round--one") ? now : all.findIndex((item) => item.contains(document.activeElement));
    for (let ahead = 1; ahead <= all.length; ahead++) {
      const at = (from + ahead + all.length) % all.length;
      if (!isOpen(all[at])) continue;
      if (round.classList.contains("round--one")) return goTo(at, true);
      all[at].tabIndex = -1;
      all[at].focus({ preventScroll: true });
      return all[at].scrollIntoView({ block: "center" });
    }
    return document.getElementById("round-status").scrollIntoView({ block: "center" });
  }

  function enhanceList(list) {
    enhance(list);
    if (!isOneFromServer) offerShelf(list);
  }

  round.querySelectorAll(".round__list").forEach(enhanceList);
  round.addEventListener("round-shown", sayCounts);
  self.roundRest.unfolded = enhanceList;
  if (!isOneFromServer && (items().length > 0 || self.roundRest.waits)) {
    viewLink.addEventListener("click", (event) => {
      event.preventDefault();
      turn(!round.classList.contains("round--one"));
    });
    // whoever walks the round with a phone has one thing on it, unless they liked the list better
    const isWalking = "looks" in round.dataset && matchMedia("(max-width: 52rem)").matches;
    if (remembered() === "one" || (remembered() === null && isWalking)) {
      view(true);
      // once it is known what waits here, that is no more to do
      round.addEventListener("round-shown", () => goTo(Math.max(0, items().findIndex(isOpen)), false), { once: true });
    }
  }

  self.roundWalk = { enhance, asBefore, nextOpen, goOn, tellHow };
})();
