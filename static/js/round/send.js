// Sends what is kept, one sender at a time over all tabs and the worker. A tick counts as sent only after the server has said
// of that very tick that it keeps it.
(() => {
  const kept = self.roundKept;
  const AT_ONCE = 100;
  const PATIENCE_MS = 20000;
  const LEASE_MS = 30000;
  const TURN_MS = 250;
  const UNREADABLE = [400, 413, 415, 422];

  /** Runs work while nobody else sends; waits for its turn. */
  async function alone(work) {
    if (self.navigator.locks) {
      return self.navigator.locks.request("warmshelf-send", work);
    }
    while (!(await kept.lease("send", LEASE_MS))) await new Promise((then) => setTimeout(then, TURN_MS));
    try {
      return await work();
    } finally {
      await kept.endLease("send");
    }
  }

  async function post(address, body) {
    const stop = new AbortController();
    const timer = setTimeout(() => stop.abort(), PATIENCE_MS);
    try {
      const reply = await fetch(address, {
        method: "POST",
        credentials: "same-origin",
        redirect: "error",
        signal: stop.signal,
        headers: { "Content-Type": "application/json", Accept: "application/json" },
        body: JSON.stringify(body),
      });
      const json = (reply.headers.get("Content-Type") ?? "").startsWith("application/json");
      return { status: reply.status, said: json ? await reply.json() : null };
    } catch {
      return { status: 0, said: null };
    } finally {
      clearTimeout(timer);
    }
  }

  async function note(answer, at) {
    if (answer.answer === "refused") {
      return kept.change(answer.id, { state: "refused", sentence: answer.sentence, again: answer.again });
    }
    return kept.change(answer.id, { state: "sent", sentence: answer.sentence, sentAt: at, standsAs: answer.entry || answer.id });
  }

  /** Without signal the phone itself says so; with signal a server may still be out of reach, or answer that it cannot. */
  function verdict(status, said) {
    if (status === 401) return "sign-in";
    if (status === 409 && said?.otherMember) return "other-member";
    if (status === 0) return navigator.onLine === false ? "no-signal" : "no-server";
    // what answers well but says nothing of ours is something in between, such as the page of a guest network
    return status < 400 ? "no-server" : "trouble";
  }

  /** Sends the rest, and again singly where the server cannot read them together, or stumbles, so that one bad tick holds up no other. */
  async function sendAll(member, waiting) {
    let many = AT_ONCE;
    let end = "sent";
    for (let at = 0; at < waiting.length; ) {
      const ticks = waiting.slice(at, at + many);
      const entries = ticks.map((tick) => tick.body);
      const { status, said } = await post("/round/entries", { sentAt: new Date().toISOString(), member, entries });
      if (status === 200 && Array.isArray(said?.entries)) {
        for (const answer of said.entries) await note(answer, said.at);
        at += ticks.length;
      } else if ((UNREADABLE.includes(status) || status === 500) && ticks.length > 1) {
        many = 1;
      } else if (status === 500) {
        end = "trouble";
        at += 1;
      } else if (UNREADABLE.includes(status)) {
        await note({ id: ticks[0].id, answer: "refused", sentence: said?.error ?? "It could not be read.", again: false });
        at += 1;
      } else {
        return verdict(status, said);
      }
    }
    return end;
  }

  function base64(bytes) {
    const all = new Uint8Array(bytes);
    let text = "";
    for (let at = 0; at < all.length; at += 8192) text += String.fromCharCode(...all.subarray(at, at + 8192));
    return btoa(text);
  }

  /** Sends the photos of ticks that are stored, one by one; a photo is forgotten only once the server has it or never will. */
  async function sendPhotos(member) {
    for (const tick of await of(member, (each) => each.state === "sent" && each.photo)) {
      const { id, jpeg } = tick.photo;
      const { status, said } = await post("/round/photos", { id, entry: tick.standsAs ?? tick.id, member, jpeg: base64(jpeg) });
      if (status === 200 && said?.kept) await kept.change(tick.id, { photo: null });
      else if (UNREADABLE.includes(status) && said?.error) await kept.change(tick.id, { photo: null, sentence: said.error });
      else return verdict(status, said);
    }
    return "sent";
  }

  const of = async (member, which) =>
    (await kept.all()).filter((tick) => tick.member === member && which(tick)).sort((one, other) => one.at - other.at);

  /** Sends what waits of a member's: 'sent', 'sign-in', 'other-member', 'no-signal', 'no-server' or 'trouble'. */
  self.roundSend = (member) =>
    alone(async () => {
      const end = await sendAll(member, await of(member, (tick) => tick.state === "waiting"));
      return end === "sent" ? sendPhotos(member) : end;
    });

  /** How it stands with the server while nothing waits: 'sent', 'no-signal', 'no-server' or 'trouble'. */
  self.roundReach = async () => {
    const stop = new AbortController();
    const timer = setTimeout(() => stop.abort(), PATIENCE_MS);
    try {
      const reply = await fetch("/health", { credentials: "omit", redirect: "error", cache: "no-store", signal: stop.signal });
      return reply.ok && (await reply.json()).status ? "sent" : verdict(reply.status);
    } catch {
      return verdict(0);
    } finally {
      clearTimeout(timer);
    }
  };

  self.roundAlone = alone;
})();
