// Small comforts; every page works without them.

// After a form came back, those who hear the page or use a keyboard start at the list of problems.
document.getElementById("problems")?.focus();

// Escape closes the phone's 'More' and returns to its button.
document.addEventListener("keydown", (event) => {
  const more = document.querySelector(".foot-nav details[open]");
  if (event.key === "Escape" && more) {
    more.open = false;
    more.querySelector("summary").focus();
  }
});
