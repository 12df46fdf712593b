// What a phone keeps of the round until the server has it. Runs on the page and in the worker; no other part touches the store.
(() => {
  const NAME = "warmshelf-round";
  const PATIENCE_MS = 4000;
  let opening = null;

  /** Opens the store; fails where the browser keeps nothing, as in some private windows. */
  function open() {
    opening ??= new Promise((resolve, reject) => {
      const request = indexedDB.open(NAME, 1);
      setTimeout(() => reject(new Error("the store does not open")), PATIENCE_MS);
      request.onupgradeneeded = () => {
        request.result.createObjectStore("ticks", { keyPath: "id" });
        request.result.createObjectStore("leases", { keyPath: "name" });
      };
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    return opening;
  }

  /** Runs one transaction; what it answers is there only once it is on the disk. */
  async function within(store, work) {
    const database = await open();
    return new Promise((resolve, reject) => {
      const transaction = database.transaction(store, "readwrite", { durability: "strict" });
      let answer;
      transaction.oncomplete = () => resolve(answer);
      transaction.onabort = () => reject(transaction.error ?? new Error("the store refused"));
      work(transaction.objectStore(store), (value) => (answer = value));
    });
  }

  const kept = {
    open,

    all: () => within("ticks", (ticks, answer) => (ticks.getAll().onsuccess = (found) => answer(found.target.result))),

    /** Keeps a tick, and in the same moment forgets the one it replaces. */
    put: (tick, instead) =>
      within("ticks", (ticks) => {
        ticks.put(tick);
        if (instead) ticks.delete(instead);
      }),

    forget: (id) => within("ticks", (ticks) => ticks.delete(id)),

    /** Changes a tick that is still there. */
    change: (id, changes) =>
      within("ticks", (ticks, answer) => {
        ticks.get(id).onsuccess = (found) => {
          if (!found.target.result) return;
          ticks.put({ ...found.target.result, ...changes });
          answer(true);
        };
      }),

    /** Takes a lease, for browsers without locks; false while somebody else holds it. */
    lease: (name, ms) =>
      within("leases", (leases, answer) => {
        leases.get(name).onsuccess = (found) => {
          const free = !found.target.result || found.target.result.until < Date.now();
          if (free) leases.put({ name, until: Date.now() + ms });
          answer(free);
        };
      }),

    endLease: (name) => within("leases", (leases) => leases.delete(name)),
  };
  /** The same while this page is open, for browsers that keep nothing. */
  const ticks = new Map();
  const inMemory = {
    open: async () => {},
    all: async () => [...ticks.values()],
    put: async (tick, instead) => {
      ticks.set(tick.id, tick);
      if (instead) ticks.delete(instead);
    },
    forget: async (id) => ticks.delete(id),
    change: async (id, changes) => ticks.has(id) && ticks.set(id, { ...ticks.get(id), ...changes }) && true,
    lease: async () => true,
    endLease: async () => {},
  };

  kept.lasting = true;

  /** Whether something of a tick has still to be sent: itself, or the photo that goes after it. */
  kept.waits = (tick) => tick.state === "waiting" || (tick.state === "sent" && Boolean(tick.photo));
  kept.useMemory = () => Object.assign(kept, inMemory, { lasting: false });
  self.roundKept = kept;
})();
