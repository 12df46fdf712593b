// Adding a passkey, and signing in by one. Where the browser has none of it, or this script does not come, the passphrase does.
(() => {
  const adding = document.getElementById("passkey-add");
  const entering = document.getElementById("passkey-in");
  const place = adding ?? entering;
  if (!place || !("PublicKeyCredential" in window)) return;
  const button = place.querySelector("button");
  const said = place.querySelector("[role=status]");

  function bytes(text) {
    return Uint8Array.from(atob(text.replace(/-/g, "+").replace(/_/g, "/")), (each) => each.charCodeAt(0));
  }

  function text(buffer) {
    return btoa(String.fromCharCode(...new Uint8Array(buffer))).replace(/\+/g, "-").replace(/\//g, "_").replace(/=/g, "");
  }

  const named = (list) => list.map((each) => ({ ...each, id: bytes(each.id) }));

  function written(made) {
    const response = { clientDataJSON: text(made.response.clientDataJSON) };
    for (const part of ["attestationObject", "authenticatorData", "signature", "userHandle"]) {
      if (made.response[part]) response[part] = text(made.response[part]);
    }
    return { id: made.id, rawId: text(made.rawId), type: made.type, response, clientExtensionResults: {} };
  }

  async function post(address, body) {
    const reply = await fetch(address, {
      method: "POST",
      credentials: "same-origin",
      headers: { "Content-Type": "application/json", Accept: "application/json" },
      body: JSON.stringify(body),
    });
    const answer = await reply.json().catch(() => ({}));
    if (!reply.ok) throw new Error(answer.error ?? place.dataset.trouble);
    return answer;
  }

  async function add() {
    const question = JSON.parse(place.dataset.question);
    const made = await navigator.credentials.create({
      publicKey: {
        ...question,
        challenge: bytes(question.challenge),
        user: { ...question.user, id: bytes(question.user.id) },
        excludeCredentials: named(question.excludeCredentials),
      },
    });
    return post("/settings/passkeys/answer", written(made));
  }

  async function enter() {
    const question = await post("/sign-in/passkey/question", {});
    const signed = await navigator.credentials.get({ publicKey: { ...question, challenge: bytes(question.challenge) } });
    return post("/sign-in/passkey?then=" + encodeURIComponent(place.dataset.then), written(signed));
  }

  place.hidden = false;
  button.addEventListener("click", async () => {
    button.disabled = true;
    said.textContent = "";
    try {
      location.assign((await (adding ? add() : enter())).then);
    } catch (trouble) {
      // what the browser says of its own reasons is in its own words; whoever closed its window knows why
      said.textContent = trouble instanceof DOMException ? place.dataset.closed : trouble.message;
      button.disabled = false;
    }
  });
})();
