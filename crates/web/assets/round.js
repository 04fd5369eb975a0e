// The round out of reach: entries wait in the browser under ids made here, and are sent when the server answers.
// Without this script every form is sent as it stands.

const NAME = "snowhum";
const WAITING = "waiting";

function opened() {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(NAME, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(WAITING, { keyPath: "id" });
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

async function inStore(mode, work) {
  const base = await opened();
  try {
    return await new Promise((resolve, reject) => {
      const transaction = base.transaction(WAITING, mode);
      const request = work(transaction.objectStore(WAITING));
      transaction.oncomplete = () => resolve(request?.result);
      transaction.onerror = transaction.onabort = () => reject(transaction.error);
    });
  } finally {
    base.close();
  }
}

// All entries of a round, or none.
const keepAll = (entries) => inStore("readwrite", (store) => void entries.forEach((entry) => store.put(entry)));
const waiting = async () => (await inStore("readonly", (store) => store.getAll())).sort((a, b) => a.made - b.made);
const drop = (id) => inStore("readwrite", (store) => void store.delete(id));
const mark = (entry, wrong) => inStore("readwrite", (store) => void store.put({ ...entry, wrong }));

// UUIDv7: sorts by the time it was made.
function newId() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  let time = Date.now();
  for (let at = 5; at >= 0; at -= 1) {
    bytes[at] = time % 256;
    time = Math.floor(time / 256);
  }
  bytes[6] = (bytes[6] & 0x0f) | 0x70;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
}

// Now; of an invented yard, this hour of the day it is looked at, on the yard's own clock: a phone far from it has
// another day.
function now(form) {
  const time = new Date();
  const { day, invented } = form.dataset;
  if (invented === undefined) return time.toISOString();
  return new Date(`${day}T${time.toTimeString().slice(0, 8)}${invented}`).toISOString();
}

function notesOf(form) {
  const visit = newId();
  const at = now(form);
  const air = form.elements.air.value.trim();
  const bare = air !== "" && Number.isFinite(Number(air.replace("−", "-").replace(",", ".")));
  const common = {
    visit,
    at,
    air: air === "" ? null : bare ? `${air} ${form.elements.air.dataset.unit}` : air,
    snow: form.querySelector("input[name=snow]:checked")?.value || null,
  };
  const notes = [];
  for (const hive of form.querySelectorAll("[data-colony]")) {
    let seen = [...hive.querySelectorAll("input[type=radio]:checked")].map((one) => one.value).filter(Boolean);
    for (const typed of hive.querySelectorAll("input[data-before]")) {
      const value = typed.value.trim();
      if (value === "") continue;
      if (typed.dataset.before === "dead=") seen = seen.filter((entry) => !entry.startsWith("dead="));
      seen.push(typed.dataset.before + value + (/[a-z]/i.test(value) ? "" : typed.dataset.after));
    }
    const words = hive.querySelector("[data-words]").value.trim() || null;
    if (seen.length === 0 && words === null) continue;
    const name = hive.querySelector("legend").textContent;
    notes.push({ id: newId(), made: Date.now() + notes.length / 1000, name, note: { ...common, colony: hive.dataset.colony, seen, words } });
  }
  return notes;
}

// Not signed in, only a link to look, too slow, too often.
const LATER = [401, 403, 408, 429];
let sending = false;
let signedOut = false;

async function send() {
  if (sending) return;
  sending = true;
  signedOut = false;
  try {
    for (const entry of await waiting()) {
      if (entry.wrong) continue;
      const answer = await fetch(`/api/notes/${entry.id}`, {
        method: "PUT",
        headers: { "content-type": "application/json" },
        body: JSON.stringify(entry.note),
      });
      // 409: the server has both; nothing is lost and nothing is left to send.
      if (answer.ok || answer.status === 409) await drop(entry.id);
      // Nothing is wrong with the entry: it waits until the keeper signs in, or the server has time.
      else if (LATER.includes(answer.status) || answer.status >= 500) {
        signedOut = answer.status === 401 || answer.status === 403;
        break;
      } else await mark(entry, (await answer.json().catch(() => ({}))).wrong ?? "refused");
    }
  } catch (unreachable) {
    // Out of reach: it waits.
  } finally {
    sending = false;
    await show();
  }
}

async function show() {
  const line = document.getElementById("waiting");
  const entries = await waiting().catch(() => []);
  line.replaceChildren();
  line.hidden = entries.length === 0;
  if (entries.length === 0) return;
  const open = entries.filter((entry) => !entry.wrong);
  const strong = document.createElement("strong");
  const hives = open.map((entry) => entry.name).join(", ");
  strong.textContent = open.length > 0 ? `${open.length} waiting to be sent: ${hives}. ` : "";
  line.append(strong);
  if (signedOut && open.length > 0) {
    const way = document.createElement("a");
    way.href = "/sign-in?to=/round";
    way.textContent = "Sign in to send them";
    line.append(way, ". ");
  }
  for (const entry of entries.filter((one) => one.wrong)) {
    const refused = document.createElement("span");
    refused.textContent = `${entry.name} was not taken: ${entry.wrong} `;
    const away = document.createElement("button");
    away.textContent = `Put back to mend (${entry.note.seen.join("; ")})`;
    away.addEventListener("click", async () => {
      const words = document.querySelector(`[data-colony="${CSS.escape(entry.note.colony)}"] [data-words]`);
      if (words) words.value = [...entry.note.seen, entry.note.words ?? ""].join("; ");
      await drop(entry.id);
      await show();
    });
    line.append(refused, away);
  }
}

function told(form, words) {
  let line = document.getElementById("round-told");
  if (line === null) {
    line = document.createElement("p");
    line.id = "round-told";
    line.className = "kept";
    line.setAttribute("role", "status");
    form.before(line);
  }
  line.textContent = words;
  line.scrollIntoView({ block: "center" });
}

const form = document.getElementById("round");
form?.addEventListener("submit", async (event) => {
  event.preventDefault();
  const notes = notesOf(form);
  if (notes.length === 0) return told(form, "No hive was noted: tap what you saw at one at least.");
  try {
    await keepAll(notes);
  } catch (full) {
    return form.submit();
  }
  form.reset();
  await send();
  const left = (await waiting()).filter((entry) => notes.some((note) => note.id === entry.id));
  const name = (list) => list.map((entry) => entry.name).join(", ");
  if (left.length === 0) told(form, `${notes.length} hives noted and stored: ${name(notes)}.`);
  else told(form, `Kept in this phone and waiting: ${name(left)}. They are sent when ${signedOut ? "you have signed in" : "the server can be reached"}.`);
});

if ("serviceWorker" in navigator) navigator.serviceWorker.register("/offline.js").catch(() => {});
addEventListener("online", send);
document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && send());
setInterval(send, 30000);
send();
