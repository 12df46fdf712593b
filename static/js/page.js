// Small comforts; every page works without them.

// After a form came back, those who hear the page or use a keyboard start at the list of problems.
document.getElementById("problems")?.focus();

// The page that stands for one which cannot be had says which of the two it is.
const why = document.getElementById("offline-why");
if (why) why.textContent = navigator.onLine ? "The server cannot be reached." : "There is no signal here.";

// Paper cannot be unfolded: tables are printed open, also where a style sheet cannot open them.
const unfolded = [];
addEventListener("beforeprint", () => {
  for (const folded of document.querySelectorAll("details:not([open])")) {
    if (!folded.querySelector("table")) continue;
    folded.open = true;
    unfolded.push(folded);
  }
});
addEventListener("afterprint", () => unfolded.splice(0).forEach((folded) => (folded.open = false)));

// Escape closes the phone's 'Menu' and returns to its button.
document.addEventListener("keydown", (event) => {
  const more = document.querySelector(".foot-nav details[open]");
  if (event.key === "Escape" && more) {
    more.open = false;
    more.querySelector("summary").focus();
  }
});

// A search shows what fits while it is typed; the button does the same where nothing is typed with scripts.
for (const form of document.querySelectorAll("form[data-found]")) {
  const found = document.getElementById(form.dataset.found);
  let asked = 0;
  let wait = 0;
  const find = async () => {
    const mine = ++asked;
    try {
      const answer = await fetch(form.action + "?" + new URLSearchParams(new FormData(form)));
      if (!answer.ok || answer.redirected) return;
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      const fits = page.getElementById(found.id);
      // of two answers the later question's counts
      if (mine === asked && fits) found.replaceChildren(...fits.childNodes);
    } catch {
      // no signal: the button leads to the page that says so
    }
  };
  form.addEventListener("input", () => {
    clearTimeout(wait);
    wait = setTimeout(find, 200);
  });
}

// A number that is most often near what stands there is stepped up and down with a thumb.
for (const stepped of document.querySelectorAll("[data-stepped]")) {
  const input = stepped.querySelector("input");
  const about = stepped.querySelector("label").textContent;
  const row = document.createElement("div");
  row.className = "actions";
  input.before(row);
  row.append(input);
  for (const [sign, by, words] of [["−", -1, "One fewer"], ["+", 1, "One more"]]) {
    const press = document.createElement("button");
    press.type = "button";
    press.className = "button button--plain";
    press.textContent = sign;
    press.setAttribute("aria-label", `${words}: ${about}`);
    press.addEventListener("click", () => (input.value = String(Math.max(1, (parseInt(input.value, 10) || 0) + by))));
    if (by < 0) input.before(press);
    else input.after(press);
  }
}
