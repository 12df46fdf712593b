// Has this device told: the browser is asked only after the press. Without this script the lists and their buttons still work.
(() => {
  const form = document.getElementById("push-add");
  if (!form) return;
  const button = form.querySelector("button");
  const told = form.dataset.told === "yes";

  function say(state) {
    for (const words of document.querySelectorAll("[data-push]")) words.hidden = words.dataset.push !== state;
  }

  function text(buffer) {
    return btoa(String.fromCharCode(...new Uint8Array(buffer)))
      .replace(/\+/g, "-")
      .replace(/\//g, "_")
      .replace(/=/g, "");
  }

  function bytes(key) {
    return Uint8Array.from(atob(key.replace(/-/g, "+").replace(/_/g, "/")), (each) => each.charCodeAt(0));
  }

  /** What stands in the way on this device, before anybody is asked; empty: nothing. */
  function obstacle() {
    if (!isSecureContext) return "insecure";
    if (!("serviceWorker" in navigator && "PushManager" in window && "Notification" in window)) return "unsupported";
    return Notification.permission === "denied" ? "denied" : "";
  }

  async function subscription() {
    const worker = await navigator.serviceWorker.getRegistration("/");
    return worker?.pushManager.getSubscription();
  }

  async function look() {
    const trouble = obstacle();
    if (trouble) return say(trouble);
    const has = Notification.permission === "granted" && (await subscription().catch(() => null));
    if (told && has) return say("told");
    form.hidden = false;
    if (told) say("lost");
  }

  /** The browser's address for us; one made for other keys is of no use. */
  async function address(worker) {
    const old = await worker.pushManager.getSubscription();
    const key = old?.options?.applicationServerKey;
    if (old && key && text(key) === form.dataset.key) return old;
    if (old) await old.unsubscribe();
    return worker.pushManager.subscribe({ userVisibleOnly: true, applicationServerKey: bytes(form.dataset.key) });
  }

  async function fill() {
    const answer = await Notification.requestPermission();
    if (answer !== "granted") return answer === "denied" ? "denied" : "unanswered";
    let worker;
    try {
      await navigator.serviceWorker.register("/worker.js");
      worker = await navigator.serviceWorker.ready;
    } catch {
      return "unready";
    }
    try {
      const made = await address(worker);
      form.elements.endpoint.value = made.endpoint;
      form.elements.p256dh.value = text(made.getKey("p256dh"));
      form.elements.auth.value = text(made.getKey("auth"));
      return "";
    } catch {
      return "unreached";
    }
  }

  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    button.disabled = true;
    const trouble = await fill();
    button.disabled = false;
    if (!trouble) return form.submit();
    if (trouble === "denied") form.hidden = true;
    say(trouble);
  });

  // The browser lets go of the address too; the server stops in any case.
  const stop = document.getElementById("push-stop");
  stop?.addEventListener("submit", async (event) => {
    event.preventDefault();
    await (await subscription().catch(() => null))?.unsubscribe().catch(() => {});
    stop.submit();
  });

  look();
})();
