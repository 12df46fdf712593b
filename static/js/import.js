// Follows the reading of a file; without this script the page loads itself anew.
const section = document.querySelector("[data-import-progress]");
const bar = section?.querySelector("progress");
const words = section?.querySelector("[data-import-words]");

async function look() {
  try {
    const answer = await fetch(section.dataset.importProgress, { headers: { Accept: "application/json" } });
    if (!answer.ok) {
      location.reload();
      return;
    }
    const state = await answer.json();
    if (!state.busy) {
      location.reload();
      return;
    }
    bar.value = state.percent;
    if (words.textContent !== state.words) {
      words.textContent = state.words;
    }
  } catch {
    // no signal just now; the next look may have one
  }
  setTimeout(look, 1500);
}

if (section) {
  setTimeout(look, 700);
}
