// On a tablet at a rack: who is ticking. Kept here until it is changed or nobody has ticked for a while, and said by each tick,
// so that it is right without signal too; without this script the server keeps it in a cookie.
(() => {
  const form = document.getElementById("round-who");
  if (!form) return;
  const NAME = "warmshelf.looker";
  const LOOK_MS = 15000;
  const idleMs = Number(form.dataset.idle) * 60000;
  const choice = form.elements.looker;

  function remembered() {
    try {
      const { who, at } = JSON.parse(localStorage.getItem(NAME));
      const isIdle = Date.now() - at > idleMs || Date.now() < at;
      return isIdle || ![...choice.options].some((option) => option.value === who) ? "" : who;
    } catch {
      return "";
    }
  }

  function remember(who) {
    try {
      localStorage.setItem(NAME, JSON.stringify({ who, at: Date.now() }));
    } catch {
      // a browser that keeps nothing: the choice holds as long as this page
    }
  }

  choice.value = remembered() || choice.value;
  remember(choice.value);
  form.querySelector("button").remove();
  form.addEventListener("submit", (event) => event.preventDefault());
  choice.addEventListener("change", () => remember(choice.value));
  setInterval(() => {
    if (document.activeElement !== choice && remembered() === "") choice.value = "";
  }, LOOK_MS);

  /** What a tick says of who pressed; nothing where it is the tablet's own. */
  self.roundWho = {
    pressed() {
      if (choice.value && remembered() === "") choice.value = "";
      remember(choice.value);
      return choice.value ? { seenBy: choice.value } : {};
    },
  };
})();
