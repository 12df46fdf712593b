// Shows what is kept beside the thing it is about, and the line at the top that says how it stands.
(() => {
  const round = document.getElementById("round");
  if (!round) return;
  const status = document.getElementById("round-status");
  const elsewhere = document.getElementById("round-elsewhere");
  const UNDOABLE = ["look", "chilled", "soaked", "first-feed", "trimmed"];
  const DAILY = ["look", "reading"];
  const OFF_BY_C = 2;

  const itemOf = (tick) => round.querySelector(`[data-sowing="${tick.subject}"], [data-mat="${tick.subject}"]`);
  const hour = (iso) => new Date(iso).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
  const isLater = (one, other) => Date.parse(one) > Date.parse(other);

  const stepOf = (tick) => (tick.body.mat ? "reading" : tick.body.step);
  const days = daysOf(round.dataset.zone);
  const isOfToday = (tick) => days.format(new Date(tick.body.seenAt)) === days.format(new Date());

  /** Days as the group counts them, or as the phone does where it does not know the group's zone. */
  function daysOf(timeZone) {
    try {
      return new Intl.DateTimeFormat("en", { timeZone, dateStyle: "short" });
    } catch {
      return new Intl.DateTimeFormat("en", { dateStyle: "short" });
    }
  }

  function element(name, className, text) {
    const made = document.createElement(name);
    if (className) made.className = className;
    if (text) made.textContent = text;
    return made;
  }

  function button(words, about, act, id) {
    const made = element("button", "button button--plain", words);
    made.type = "button";
    made.dataset.act = act;
    made.dataset.of = id;
    made.append(element("span", "hidden-words", ": " + about));
    return made;
  }

  function heading(tick) {
    if (tick.state === "refused") return "Not taken";
    if (tick.state === "sent") return tick.photo ? "Sent, its photo waits" : "Sent";
    return roundKept.lasting ? "Kept on this phone" : "On its way";
  }

  const looks = (tick) => tick.state + tick.sentence + Boolean(tick.photo);

  /** A mat that is off is said at once, also without signal. */
  function warning(tick, item) {
    if (!tick.body.mat || !item) return "";
    const typed = parseFloat(String(tick.body.celsius).replace(",", "."));
    const celsius = tick.body.unit === "F" ? ((typed - 32) * 5) / 9 : typed;
    return Math.abs(celsius - Number(item.dataset.set)) > OFF_BY_C ? " Too far from what it is set to: turn it and tell a coordinator." : "";
  }

  const canUndo = (tick) => (tick.state === "waiting" || (UNDOABLE.includes(tick.body.step) && !tick.body.mat)) && tick.body.step !== "undone";

  function line(tick, item) {
    const made = element(item ? "div" : "li", "round__kept round__kept--" + tick.state);
    made.dataset.tick = tick.id;
    made.dataset.is = looks(tick);
    made.tabIndex = -1;
    const words = element("p");
    words.append(element("strong", "", heading(tick)), `: ${item ? "" : tick.title + ", "}${tick.words}, ${hour(tick.body.seenAt)}.`);
    if (tick.sentence) words.append(" " + tick.sentence);
    const warned = warning(tick, item);
    if (warned) words.append(element("strong", "", warned));
    made.append(words);
    const actions = element("div", "actions");
    if (tick.state === "refused") {
      actions.append(button("Change", tick.title, "change", tick.id));
      if (tick.again) actions.append(button("Try again", tick.title, "again", tick.id));
      actions.append(button("Throw away", tick.title, "forget", tick.id));
    } else {
      if (canUndo(tick)) actions.append(button("Undo", tick.title, "undo", tick.id));
      if (item) actions.append(button("Next to do", "", "next", tick.id));
    }
    if (actions.childElementCount) made.append(actions);
    return made;
  }

  /** What is to be seen: not what was taken back, and not what the page itself shows already. */
  function worthShowing(ticks) {
    const takenBack = new Set(ticks.filter((tick) => tick.body.step === "undone" && tick.state !== "refused").map((tick) => tick.body.supersedes));
    return ticks.filter(
      (tick) => !takenBack.has(tick.standsAs ?? tick.id) && (tick.state !== "sent" || roundKept.waits(tick) || isLater(tick.sentAt, round.dataset.made)),
    );
  }

  function draw(tick) {
    const item = itemOf(tick);
    const old = round.querySelector(`[data-tick="${tick.id}"]`);
    if (old && old.dataset.is === looks(tick) && (item ?? elsewhere).contains(old)) return;
    const made = line(tick, item);
    const focused = old?.contains(document.activeElement);
    // Whoever has stepped on to one of the buttons stays on it, or the next key would press another.
    const act = focused ? document.activeElement.dataset.act : undefined;
    if (old && (item ?? elsewhere).contains(old)) old.replaceWith(made);
    else {
      old?.remove();
      (item ?? elsewhere).append(made);
    }
    if (focused) (made.querySelector(`[data-act="${act}"]`) ?? made).focus();
  }

  /** A check whose tick is kept is no more to be ticked, until the page itself knows of it or, of what is daily, another day. */
  function fold(shown) {
    for (const item of round.querySelectorAll("[data-sowing], [data-mat]")) {
      const mine = shown.filter((tick) => itemOf(tick) === item && tick.state !== "refused");
      const made = item.dataset.made ?? round.dataset.made;
      const ticked = mine.filter((tick) => stepOf(tick) !== "undone" && (tick.state === "waiting" || isLater(tick.sentAt, made)));
      const done = ticked.filter((tick) => isOfToday(tick) || !DAILY.includes(stepOf(tick))).map(stepOf);
      // whoever enters a step has looked as well
      if (ticked.some(isOfToday)) done.push("look");
      // a check that can be answered in several ways has a form for each
      const forms = [...item.querySelectorAll("form.round__do")].map((form) => ({
        box: form.closest(".round__check") ?? form,
        step: item.dataset.mat ? "reading" : form.elements.step.value,
      }));
      for (const { box } of forms) box.hidden = forms.some((other) => other.box === box && done.includes(other.step));
      item.classList.toggle("round__item--kept", mine.some((tick) => tick.state === "waiting"));
    }
  }

  /** Redraws all lines from what is kept of this member's. */
  function show(ticks) {
    const shown = worthShowing(ticks);
    const ids = new Set(shown.map((tick) => tick.id));
    for (const old of round.querySelectorAll("[data-tick]")) if (!ids.has(old.dataset.tick)) old.remove();
    // what is not on the page yet may still come
    const isWhole = elsewhere && !self.roundRest.waits;
    shown.filter((tick) => isWhole || itemOf(tick)).forEach(draw);
    if (elsewhere) elsewhere.hidden = elsewhere.childElementCount === 0;
    fold(shown);
  }

  /** Why nothing gets through, where nothing waits yet and after how much waits. */
  const OUT_OF_REACH = {
    "no-signal": ["No signal", ", waiting for signal"],
    "no-server": ["The server cannot be reached", "; the server cannot be reached, so they are sent later"],
    trouble: ["The server has trouble", "; the server has trouble, so they are sent later"],
  };

  function sentence(waiting, end) {
    const why = OUT_OF_REACH[end];
    // what cannot be reached may have changed since
    const from = `. This page is from ${hour(round.dataset.made)}`;
    if (waiting === 0) return why ? `${why[0]}: what you tick is kept on this phone${from}` : "All sent";
    if (end === "sending") return `Sending ${waiting}…`;
    return `${waiting} kept on this phone` + (why ? why[1] + from : "; somebody else is signed in");
  }

  /** Says how it stands: how many wait, why, and what else there is to know. */
  function tell(all, end) {
    const mine = all.filter((tick) => tick.member === round.dataset.member);
    const waiting = mine.filter(roundKept.waits).length;
    const refused = mine.filter((tick) => tick.state === "refused").length;
    const others = all.filter((tick) => tick.member !== round.dataset.member && (tick.state === "refused" || roundKept.waits(tick)));
    const parts = [];
    if (!roundKept.lasting) parts.push("This browser keeps nothing (a private window?): leave this page open until all is sent.");
    if (!(waiting && end === "sign-in")) parts.push(sentence(waiting, end) + ".");
    if (refused) parts.push(`${refused} not taken: ${elsewhere ? "see below" : "see the list"}.`);
    if (others.length) parts.push(`${others.length} of ${others[0].memberName}’s are kept here too and go when ${others[0].memberName} signs in.`);
    const words = parts.join(" ");
    if (waiting && end === "sign-in") {
      const link = element("a", "", `Sign in to send ${waiting} kept ${waiting === 1 ? "tick" : "ticks"}`);
      link.href = "/sign-in?then=/today";
      status.replaceChildren(link, words ? " " + words : "");
    } else if (status.textContent !== words) {
      status.textContent = words;
    }
    status.classList.toggle("round__status--open", waiting + refused > 0 || end in OUT_OF_REACH);
  }

  self.roundShow = { show, tell, element, itemOf, canUndo, isOutOfReach: (end) => end in OUT_OF_REACH };
})();
