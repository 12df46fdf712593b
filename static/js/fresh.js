// Tells whoever looks at a board that somebody changed it. Nothing moves under a hand: only a press shows it anew.
// It shares its page with other scripts, and so keeps its names to itself.

(() => {
  const EVERY_MS = 20000;
  const news = document.getElementById("board-news");
  let ended = false;

  async function ask() {
    if (document.hidden || ended || !news.hidden) return;
    try {
      const reply = await fetch("/racks/state", { headers: { Accept: "application/json", "If-None-Match": `"${news.dataset.state}"` } });
      if (reply.status === 200) news.hidden = false;
      else if (reply.status !== 304) ended = true; // signed out, say; the next page tells
    } catch {
      // No signal: asked again later.
    }
  }

  news.querySelector("[data-show]").addEventListener("click", (event) => {
    event.preventDefault();
    location.reload();
  });
  setInterval(ask, EVERY_MS);
  document.addEventListener("visibilitychange", ask);
})();
