// The round with a queue: a tick is kept on the phone first, then sent; without this script the same forms post as ever.
(() => {
  const round = document.getElementById("round");
  if (!round) return;
  const kept = self.roundKept;
  const { show, tell, itemOf, canUndo, isOutOfReach } = self.roundShow;
  const me = round.dataset.member;
  const RETRY_MS = 30000;
  const FRESH_MS = 60000;
  const news = "BroadcastChannel" in self ? new BroadcastChannel("warmshelf-round") : null;
  let end = "sending";

  const opened = kept.open().catch(() => kept.useMemory());

  // ---- making a tick

  function uuid() {
    if (crypto.randomUUID) return crypto.randomUUID();
    const bytes = crypto.getRandomValues(new Uint8Array(16));
    bytes[6] = (bytes[6] & 15) | 64;
    bytes[8] = (bytes[8] & 63) | 128;
    const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
    return hex.replace(/^(.{8})(.{4})(.{4})(.{4})/, "$1-$2-$3-$4-");
  }

  function tick(item, body, words) {
    const id = uuid();
    const about = item.dataset.mat ? { mat: item.dataset.mat } : { sowing: item.dataset.sowing };
    const seen = { id, ...about, ...self.roundWho?.pressed(), seenAt: new Date().toISOString(), pageAt: item.dataset.made ?? round.dataset.made };
    return {
      id,
      member: me,
      memberName: round.dataset.name,
      state: "waiting",
      subject: item.dataset.mat ?? item.dataset.sowing,
      title: item.dataset.title,
      words,
      at: Date.now(),
      sentence: "",
      body: { ...seen, ...body },
    };
  }

  function read(form, pressed) {
    const item = form.closest("[data-sowing], [data-mat]");
    const typed = new FormData(form);
    const text = (name) => (typed.get(name) ?? "").trim();
    if (item.dataset.mat) {
      const unit = round.dataset.unit;
      return tick(item, { celsius: text("celsius"), unit }, `${text("celsius")} °${unit}`);
    }
    const nothing = pressed?.name === "nothing";
    const body = { step: text("step"), finished: typed.has("finished") };
    for (const name of ["sprouted", "moved", "lost", "giveAway", "problem", "note", "lightPlace"]) if (text(name)) body[name] = text(name);
    if (nothing) body.sprouted = pressed.value;
    return tick(item, body, words(form, body, nothing && pressed.firstChild.textContent.trim().toLowerCase()));
  }

  function words(form, body, nothing) {
    if (nothing) return nothing;
    const parts = [];
    if (body.step !== "look" || (!body.sprouted && !body.problem && !body.lost && !body.note)) parts.push(form.dataset.words);
    if (body.sprouted) parts.push(body.sprouted + " so far");
    if (body.moved) parts.push(body.moved + " moved so far");
    if (body.giveAway) parts.push(body.giveAway + " to give away");
    if (body.problem) parts.push(form.elements.problem.selectedOptions[0].textContent);
    if (body.lost) parts.push(body.lost + " lost so far");
    if (body.note) parts.push("“" + body.note + "”");
    return parts.join(", ");
  }

  // ---- keeping and sending

  async function store(made, instead) {
    await opened;
    if (end === "sent") end = "sending";
    try {
      await kept.put(made, instead);
    } catch {
      kept.useMemory();
      await kept.put(made, instead);
    }
  }

  async function redraw() {
    const all = await kept.all();
    show(all.filter((each) => each.member === me));
    tell(all, end);
    round.dispatchEvent(new Event("round-shown"));
    return all;
  }

  async function send() {
    await opened;
    const before = (await kept.all()).filter((each) => kept.waits(each) && each.member === me);
    if (before.length && !isOutOfReach(end) && end !== "sign-in") end = "sending";
    await redraw();
    const mayBeCutOff = isOutOfReach(end) || Math.abs(Date.now() - Date.parse(round.dataset.made)) > FRESH_MS;
    end = await self.roundSend(me);
    // with nothing to send nobody has asked the server yet
    if (end === "sent" && before.length === 0 && mayBeCutOff) end = await self.roundReach();
    const after = await redraw();
    const sent = after.filter((each) => each.state === "sent" && before.some((one) => one.id === each.id));
    if (sent.length) news?.postMessage("sent");
    await Promise.all([...new Set(sent.filter((each) => !each.body.mat).map((each) => each.subject))].map((subject) => refresh(subject, sent)));
    if (sent.length) await redraw();
  }

  /** Puts an item as the server now has it in the place of the old one, unless somebody is typing there. */
  async function refresh(subject, sent) {
    const old = itemOf({ subject });
    if (!old || old.querySelector(".round__extra") || (old.contains(document.activeElement) && document.activeElement.matches("input, select, textarea"))) return;
    try {
      const reply = await fetch("/today/items/" + subject, { headers: { Accept: "text/html" } });
      if (!reply.ok || reply.redirected) return;
      const answer = new DOMParser().parseFromString(await reply.text(), "text/html");
      const fresh = answer.querySelector("li.round__item");
      for (const told of answer.querySelectorAll(".round__told")) if (!document.getElementById(told.id)) document.getElementById("round-hows").append(told);
      fresh.dataset.made = sent.filter((each) => each.subject === subject).reduce((last, each) => (each.sentAt > last ? each.sentAt : last), "");
      if (old.classList.contains("round__item--now")) fresh.classList.add("round__item--now");
      const lines = [...old.querySelectorAll("[data-tick]")];
      const active = document.activeElement;
      const focused = lines.some((line) => line.contains(active));
      old.replaceWith(fresh);
      self.roundWalk.enhance(fresh);
      fresh.append(...lines);
      if (focused) active.focus();
    } catch {
      // what the page shows stays; the tick is kept
    }
  }

  /** The photo chosen in a form, made small; the one that waited already where a tick is changed. */
  async function photoOf(form) {
    const file = form.elements.photo?.files[0];
    if (file) return { id: uuid(), jpeg: await self.roundPhoto(file) };
    const before = form.dataset.replaces && (await kept.all()).find((each) => each.id === form.dataset.replaces);
    return before?.photo ?? null;
  }

  async function makeTick(form, pressed) {
    const made = read(form, pressed);
    const photo = await photoOf(form);
    return photo ? { ...made, photo, words: made.words + ", with a photo" } : made;
  }

  /** Keeps some ticks, shows them, and sends them if it can. */
  async function keep(pairs) {
    for (const [form, pressed] of pairs) {
      let made;
      try {
        made = await makeTick(form, pressed);
      } catch {
        // nothing is lost: the form stays as it is, and says why
        form.querySelector("[data-wrong]").hidden = false;
        form.elements.photo.focus();
        return;
      }
      await store(made, form.dataset.replaces);
      delete form.dataset.replaces;
      if (form.classList.contains("round__extra")) form.remove();
      if (pairs.length === 1) {
        await redraw();
        if (!self.roundWalk.goOn(made, canUndo(made))) round.querySelector(`[data-tick="${made.id}"]`)?.focus();
      }
    }
    askForSync();
    await send();
  }

  function askForSync() {
    navigator.serviceWorker?.ready.then((worker) => worker.sync?.register("round")).catch(() => {});
    try {
      if (!navigator.storage?.persist || localStorage.getItem("warmshelf.asked")) return;
      localStorage.setItem("warmshelf.asked", "yes");
      navigator.storage.persist();
    } catch {
      // a browser that keeps nothing need not be asked to keep it for long
    }
  }

  // ---- undo, change, throw away

  async function undo(id) {
    // Under the lock, so that nothing is forgotten while it is on its way.
    await self.roundAlone(async () => {
      const each = (await kept.all()).find((one) => one.id === id);
      if (!each) return;
      const item = itemOf(each) ?? { dataset: each.body.mat ? { mat: each.subject, title: each.title } : { sowing: each.subject, title: each.title } };
      if (each.state === "waiting") {
        await kept.forget(id);
        self.roundWalk.asBefore(item);
      } else {
        await kept.change(id, { photo: null });
        await store(tick(item, { step: "undone", supersedes: each.standsAs ?? id }, "taken back: " + each.words));
      }
      delete item.dataset.made;
    });
    await redraw();
    await send();
  }

  async function change(id) {
    const each = (await kept.all()).find((one) => one.id === id);
    const forms = [...(itemOf(each)?.querySelectorAll("form.round__do") ?? [])];
    const form = forms.find((one) => each.body.mat || one.elements.step.value === each.body.step);
    if (!form) {
      const typed = new URLSearchParams();
      for (const name of ["step", "sprouted", "moved", "lost", "problem", "note"]) if (each.body[name]) typed.set(name, each.body[name]);
      location.href = `/sowings/${each.subject}/entry?${typed}`;
      return;
    }
    for (const input of form.elements) {
      if (input.type !== "text" || !each.body[input.name]) continue;
      input.value = each.body[input.name];
      input.dispatchEvent(new Event("input"));
    }
    form.dataset.replaces = id;
    (form.querySelector("input[type=text]") ?? form.querySelector("button")).focus();
  }

  const acts = {
    undo,
    change,
    next: () => self.roundWalk.nextOpen(),
    again: (id) => kept.change(id, { state: "waiting", sentence: "" }).then(send),
    forget: (id) => kept.forget(id).then(redraw),
  };

  round.addEventListener("click", (event) => {
    const pressed = event.target.closest("[data-act]");
    if (pressed) acts[pressed.dataset.act](pressed.dataset.of);
    if (event.target.closest("[data-close]")) event.target.closest("form").remove();
    const how = event.target.closest("a.round__how");
    if (how) {
      event.preventDefault();
      self.roundWalk.tellHow(how);
    }
    const more = event.target.closest("a.round__more");
    if (more) {
      event.preventDefault();
      const form = document.getElementById("round-more").content.cloneNode(true);
      // what is not sown has other troubles than what is
      const notHere = more.closest("[data-unsown]") ? "sown" : "unsown";
      form.querySelectorAll(`[data-only="${notHere}"]`).forEach((each) => each.remove());
      more.after(form);
      more.parentElement.querySelector("select").focus();
    }
  });

  round.addEventListener("submit", (event) => {
    event.preventDefault();
    if (event.target.closest("[data-mat]") && !event.target.elements.celsius.value.trim()) event.target.elements.celsius.focus();
    else keep([[event.target, event.submitter]]);
  });

  // ---- when to send, and the worker

  async function begin() {
    await opened;
    for (const each of await kept.all()) {
      // the page shows it already
      if (each.state === "sent" && !each.photo && each.member === me && Date.parse(each.sentAt) <= Date.parse(round.dataset.made)) await kept.forget(each.id);
    }
    await redraw();
    self.roundRest.begin(redraw);
    await send();
  }

  async function startWorker() {
    if (!("serviceWorker" in navigator)) {
      document.getElementById("round-lacks").hidden = false;
      return;
    }
    try {
      const registration = await navigator.serviceWorker.register("/worker.js");
      const takeOver = () => registration.waiting && self.roundAlone(async () => registration.waiting?.postMessage("take-over"));
      registration.addEventListener("updatefound", () => registration.installing?.addEventListener("statechange", takeOver));
      if (!navigator.serviceWorker.controller) (await navigator.serviceWorker.ready).active.postMessage("keep-today");
      else takeOver();
    } catch {
      document.getElementById("round-lacks").hidden = false;
    }
  }

  self.roundKeep = keep;
  news?.addEventListener("message", redraw);
  addEventListener("online", send);
  addEventListener("offline", () => {
    end = "no-signal";
    redraw();
  });
  document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && send());
  setInterval(async () => {
    const waits = (await kept.all()).some((each) => kept.waits(each) && each.member === me);
    if (document.visibilityState === "visible" && (waits || isOutOfReach(end))) send();
  }, RETRY_MS);
  begin();
  startWorker();
})();
