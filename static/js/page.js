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

// Escape closes the phone's 'More' and returns to its button.
document.addEventListener("keydown", (event) => {
  const more = document.querySelector(".foot-nav details[open]");
  if (event.key === "Escape" && more) {
    more.open = false;
    more.querySelector("summary").focus();
  }
});
