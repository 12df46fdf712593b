// Moving trays on the racks and in the weeks, for coordinators. Only asks and shows: the server says what clashes, and a
// form saves. Each tray is a link to its own page, where the same is done with buttons.

const START_PX = 6;
const LONG_PRESS_MS = 450;
const PAUSE_MS = 120;
const EDGE_PX = 48;

const words = document.getElementById("board-words");
const ask = document.getElementById("board-ask");
const places = [...document.querySelectorAll("[data-place]")].map((node) => {
  const [x, y, width, height] = node.dataset.box.split(" ").map(Number);
  return { node, id: node.dataset.place, svg: node.ownerSVGElement, x, y, width, height };
});
const DAY_WIDTH = Number(document.querySelector("[data-day-width]")?.dataset.dayWidth ?? 1);
const inWeeks = document.querySelector("[data-first-day]") !== null;
let held = null; // the tray in hand: tray, of (quarters), first, place, from (or null: its days stay), ghost, by
let pressed = null; // a pointer that is down on a tray and has not picked it up yet
let swallowClick = false;

document.getElementById("board-how").hidden = false;
restoreScroll();

// ---- what is held, and where it is aimed

function pickUp(tray, by, x) {
  const [first, of] = tray.dataset.slot.split("/").map(Number);
  const ghost = document.createElementNS("http://www.w3.org/2000/svg", "rect");
  ghost.setAttribute("class", "ghost");
  // What waits beside the racks lies nowhere yet, or on a mat that cannot be used.
  const place = placeOf(tray) ?? (by === "keys" ? shown()[0] : null);
  held = { tray, of, first, place, from: null, ghost, by, startX: x, answer: null, timer: 0, asking: null };
  tray.classList.add("held");
  words.hidden = false;
  words.textContent = "Picked up: " + (tray.querySelector("title") ?? tray).textContent + ".";
  draw();
  if (by === "keys") look();
}

function placeOf(tray) {
  return places.find((each) => each.node.contains(tray) || each.id === tray.dataset.lies);
}

/** The places that can be seen: a phone shows one shelf at a time. */
function shown() {
  return places.filter((each) => each.svg.getClientRects().length > 0);
}

function aim(place, first, from) {
  if (place === held.place && first === held.first && from === held.from) return;
  Object.assign(held, { place, first, from, answer: null });
  held.ghost.classList.remove("ghost--clash");
  draw();
  if (place) look();
}

function draw() {
  const { place, first, of, ghost, tray } = held;
  if (!place) {
    ghost.remove();
    return;
  }
  let box;
  if (inWeeks) {
    const own = tray.querySelector("path").getBBox();
    const shift = held.from ? daysBetween(tray.dataset.from, held.from) * DAY_WIDTH : 0;
    box = [own.x + shift, place.y + ((first - 1) / 4) * place.height, own.width, (of / 4) * place.height];
  } else {
    const half = place.width / 2;
    const depth = of === 1 ? place.height / 2 : place.height;
    box = [place.x + (first > 2 ? half : 0), place.y + (of === 1 && first % 2 === 0 ? depth : 0), of === 4 ? place.width : half, depth];
  }
  ["x", "y", "width", "height"].forEach((name, at) => ghost.setAttribute(name, box[at]));
  place.svg.append(ghost);
}

/** Asks the server, after a short pause, what would come of putting it down here. */
function look() {
  clearTimeout(held.timer);
  held.asking?.abort();
  const mine = held;
  held.timer = setTimeout(async () => {
    mine.asking = new AbortController();
    try {
      const reply = await fetch(address(mine), { headers: { Accept: "application/json" }, signal: mine.asking.signal });
      const answer = await reply.json();
      if (reply.ok) tell(mine, answer);
      else tell(mine, { fits: false, same: false, clashes: [answer.error], now: "", then: "", version: "" });
    } catch (lost) {
      if (lost.name !== "AbortError") tell(mine, { fits: false, same: false, clashes: ["The server does not answer."], now: "", then: "", version: "" });
    }
  }, PAUSE_MS);
}

function tell(mine, answer) {
  mine.answer = answer;
  if (held === mine) {
    words.textContent = answer.same ? "Where it is." : answer.fits ? answer.then + ". Fits." : "Clashes. " + answer.clashes.join(" ");
    words.classList.toggle("notice--problem", !answer.fits);
    mine.ghost.classList.toggle("ghost--clash", !answer.fits);
  }
  if (mine.whenTold) mine.whenTold();
}

function address({ tray, place, first, from }) {
  const query = new URLSearchParams({ spot: place.id + "/" + first });
  if (tray.dataset.day) query.set("day", tray.dataset.day);
  if (from) query.set("from", from);
  return tray.getAttribute("href") + "/move?" + query;
}

function letGo() {
  clearTimeout(held.timer);
  held.asking?.abort();
  held.tray.classList.remove("held");
  held.ghost.remove();
  words.classList.remove("notice--problem");
  words.hidden = true;
  held = null;
}

function cancel() {
  const { tray } = held;
  letGo();
  words.hidden = false;
  words.textContent = "Left where it was.";
  setTimeout(() => { if (!held) words.hidden = true; }, 3000);
  tray.focus();
}

/** Shows what would change; only the button there saves. */
function putDown() {
  const mine = held;
  if (!mine.place) {
    cancel();
    return;
  }
  if (!mine.answer) {
    mine.whenTold = () => { mine.whenTold = null; if (held === mine) putDown(); };
    return;
  }
  const { answer } = mine;
  if (answer.same) {
    cancel();
    return;
  }
  letGo();
  const form = ask.querySelector("form");
  document.getElementById("board-ask-title").textContent = answer.fits ? (answer.fields ? "Lay it here?" : "Move it?") : "It clashes here";
  for (const which of ["now", "then"]) {
    const said = ask.querySelector(`[data-say=${which}]`);
    said.textContent = answer[which] ?? "";
    // What has ended, say, has no other place to compare with.
    said.closest("p, div").hidden = !answer[which];
  }
  ask.querySelector("[data-say=clashes]").replaceChildren(...[...answer.clashes, ...(answer.warnings ?? [])].map((clash) => {
    const line = document.createElement("li");
    line.textContent = clash;
    return line;
  }));
  form.action = mine.tray.getAttribute("href") + (answer.fields ? "/placement" : "/move");
  form.querySelectorAll("[data-field]").forEach((each) => each.remove());
  form.elements.version.value = answer.version ?? "";
  form.elements.shown.value = answer.key ?? "";
  form.elements.spot.value = mine.place.id + "/" + mine.first;
  form.elements.from.value = mine.from ?? "";
  form.elements.back.value = location.pathname + location.search;
  fill(form, answer.fields ?? {});
  form.querySelector("[type=submit]").hidden = !answer.fits;
  ask.querySelector("[data-more]").href = (answer.fields ? mine.tray.getAttribute("href") + "?" : address(mine) + "&") + "back=" + encodeURIComponent(location.pathname + location.search);
  ask.onclose = () => mine.tray.focus();
  ask.showModal();
}

/** What the server wants back of what it said. */
function fill(form, fields) {
  for (const [name, value] of Object.entries(fields)) {
    if (!form.elements[name]) {
      const field = Object.assign(document.createElement("input"), { type: "hidden", name });
      field.dataset.field = "";
      form.append(field);
    }
    form.elements[name].value = value;
  }
}

ask.querySelector("[data-leave]").addEventListener("click", () => ask.close());
ask.querySelector("form").addEventListener("submit", keepScroll);
// The key that put the tray down, kept pressed, must not press Save as well.
ask.addEventListener("keydown", (event) => {
  if (event.repeat) event.preventDefault();
});

// ---- by mouse, pen and touch

document.addEventListener("pointerdown", (event) => {
  const tray = event.target.closest?.("[data-slot]");
  if (!tray || event.button !== 0 || held) return;
  pressed = { tray, x: event.clientX, y: event.clientY, touch: event.pointerType === "touch" };
  if (pressed.touch) {
    const mine = pressed;
    mine.timer = setTimeout(() => {
      if (pressed === mine) pickUpPressed();
    }, LONG_PRESS_MS);
  }
});

function pickUpPressed() {
  const { tray, x, y } = pressed;
  clearTimeout(pressed.timer);
  pressed = null;
  const place = placeOf(tray);
  pickUp(tray, "pointer", place ? x - place.svg.getBoundingClientRect().left : 0);
  aimAt(x, y);
}

document.addEventListener("pointermove", (event) => {
  if (pressed && Math.hypot(event.clientX - pressed.x, event.clientY - pressed.y) > START_PX) {
    if (pressed.touch) {
      clearTimeout(pressed.timer); // a finger that moves at once wants to scroll
      pressed = null;
    } else {
      pickUpPressed();
    }
  }
  if (held?.by === "pointer") {
    aimAt(event.clientX, event.clientY);
    scrollAtEdges(event.clientX, event.clientY);
  }
});

function aimAt(x, y) {
  const svg = document.elementFromPoint(x, y)?.closest("svg");
  if (!svg) {
    if (!held.tray.ownerSVGElement) aim(null, held.first, null);
    return;
  }
  const box = svg.getBoundingClientRect();
  const [left, top] = [x - box.left, y - box.top];
  const place = places.find((each) =>
    each.svg === svg && left >= each.x && left < each.x + each.width && top >= each.y && top < each.y + each.height);
  if (!place) return;
  const across = inWeeks ? 0 : (left - place.x) / place.width;
  const down = (top - place.y) / place.height;
  aim(place, slotAt(held.of, across, down), shifted(Math.round((left - held.startX) / DAY_WIDTH)));
}

/** The first quarter under a point of a place: 1 and 2 lie behind each other on the left, 3 and 4 on the right. */
function slotAt(of, across, down) {
  if (of === 4) return 1;
  if (inWeeks) return Math.min(4 / of - 1, Math.floor(down * (4 / of))) * of + 1;
  const left = across < 0.5 ? 1 : 3;
  return of === 2 ? left : left + (down < 0.5 ? 0 : 1);
}

function scrollAtEdges(x, y) {
  const across = x < EDGE_PX ? -12 : x > innerWidth - EDGE_PX ? 12 : 0;
  const down = y < EDGE_PX ? -12 : y > innerHeight - EDGE_PX ? 12 : 0;
  if (across || down) {
    window.scrollBy(0, down);
    held.place?.svg.parentElement.scrollBy(across, down);
  }
}

document.addEventListener("pointerup", () => {
  clearTimeout(pressed?.timer);
  pressed = null;
  if (held?.by === "pointer") {
    swallowClick = true;
    setTimeout(() => { swallowClick = false; }, 0);
    putDown();
  }
});
document.addEventListener("pointercancel", () => {
  clearTimeout(pressed?.timer);
  pressed = null;
  if (held?.by === "pointer") cancel();
});
document.addEventListener("click", (event) => {
  if (swallowClick) event.preventDefault();
}, true);
document.addEventListener("touchmove", (event) => {
  if (held) event.preventDefault();
}, { passive: false });
document.addEventListener("contextmenu", (event) => {
  if (held || pressed?.touch) event.preventDefault();
});
document.addEventListener("dragstart", (event) => {
  if (event.target.closest?.("[data-slot]")) event.preventDefault();
});

// ---- by keys

document.addEventListener("keydown", (event) => {
  if (ask.open) return;
  if (!held) {
    const tray = event.target.closest?.("[data-slot]");
    if (tray && (event.key === "Enter" || event.key === " ")) {
      event.preventDefault();
      pickUp(tray, "keys", 0);
    }
    return;
  }
  if (event.key === "Escape") cancel();
  else if (event.key === "Enter" || event.key === " ") putDown();
  else if (event.key === "Tab") cancel();
  else if (!step(event.key, event.shiftKey)) return;
  event.preventDefault();
});

function step(key, far) {
  const ahead = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[key];
  if (!ahead) return false;
  const sideways = key === "ArrowLeft" || key === "ArrowRight";
  if (inWeeks && sideways) {
    const so = held.from ? daysBetween(held.tray.dataset.from, held.from) : 0;
    aim(held.place, held.first, shifted(so + ahead * (far ? 7 : 1)));
  } else if (sideways || inWeeks) {
    stepSlot(ahead);
  } else {
    stepPlace(ahead);
  }
  held.ghost.scrollIntoView({ block: "nearest", inline: "nearest" });
  return true;
}

function stepSlot(ahead) {
  const first = held.first + ahead * held.of;
  if (first >= 1 && first <= 4) aim(held.place, first, held.from);
  else stepPlace(ahead, ahead > 0 ? 1 : 5 - held.of);
}

function stepPlace(ahead, first = held.first) {
  const inSight = shown();
  const next = inSight[inSight.indexOf(held.place) + ahead];
  if (next) aim(next, first, held.from);
}

// ---- days, and coming back to where one was

/** The first day so many days on; null where the days stay as they are, as they do for what lies there already. */
function shifted(days) {
  const from = held.tray.dataset.from;
  if (!inWeeks || !from || days === 0) return null;
  return new Date(Date.parse(from) + days * 86400000).toISOString().slice(0, 10);
}

function daysBetween(one, other) {
  return Math.round((Date.parse(other) - Date.parse(one)) / 86400000);
}

function scrollers() {
  return [...document.querySelectorAll(".rack__scroll, .weeks, .day-strip")];
}

function keepScroll() {
  const kept = { at: location.pathname + location.search, y: scrollY, inner: scrollers().map((each) => [each.scrollLeft, each.scrollTop]) };
  sessionStorage.setItem("board-scroll", JSON.stringify(kept));
}

function restoreScroll() {
  const kept = JSON.parse(sessionStorage.getItem("board-scroll") ?? "null");
  sessionStorage.removeItem("board-scroll");
  if (kept?.at !== location.pathname + location.search) return;
  window.scrollTo(0, kept.y);
  scrollers().forEach((each, at) => each.scrollTo(...(kept.inner[at] ?? [0, 0])));
}
