// The round out of reach: entries wait in the browser under ids made here, and are sent when the server answers.
// Without this script every form is sent as it stands.

import { VERSION, alive, information, opened as ready, told as tells } from "/verdict.js";

const form = document.getElementById("round");
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
  // A draft taken up again is of the time it was tapped at.
  const time = new Date(draftMade ?? Date.now());
  const { day, invented } = form.dataset;
  if (invented === undefined) return time.toISOString();
  return new Date(`${day}T${time.toTimeString().slice(0, 8)}${invented}`).toISOString();
}

// What was tapped at a hive. "As expected" stands for what is written beside it, but for what was tapped otherwise.
function seenAt(hive) {
  const tapped = [...hive.querySelectorAll("input[type=radio]:checked")].map((one) => one.value).filter(Boolean);
  const field = (written) => written.split("=")[0];
  const expected = hive.querySelector("[data-expected]:checked")?.value.split(";") ?? [];
  return [...expected.filter((one) => !tapped.some((other) => field(other) === field(one))), ...tapped];
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
    let seen = seenAt(hive);
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

form?.addEventListener("submit", async (event) => {
  event.preventDefault();
  const notes = notesOf(form);
  if (notes.length === 0) return told(form, "No hive was noted: tap what you saw at one at least.");
  try {
    await keepAll(notes);
  } catch (full) {
    return form.submit();
  }
  const moved = [...form.querySelectorAll("[data-colony]")].flatMap((hive) => {
    const change = verdictOf(hive)?.change;
    return change ? [`${hive.querySelector("legend").textContent} ${change}`] : [];
  });
  form.reset();
  forget();
  await send();
  const left = (await waiting()).filter((entry) => notes.some((note) => note.id === entry.id));
  const name = (list) => list.map((entry) => entry.name).join(", ");
  const what = moved.length > 0 ? ` Alive of 100 such hives, before and after: ${moved.join("; ")}.` : "";
  const hives = notes.length === 1 ? "1 hive" : `${notes.length} hives`;
  if (left.length === 0) told(form, `${hives} noted and stored: ${name(notes)}.${what}`);
  else told(form, `Kept in this phone and waiting: ${name(left)}. They are sent when ${signedOut ? "you have signed in" : "the server can be reached"}.${what}`);
});

// The draft: every tap is kept in this phone at once, through a reload, a crash and a day out of reach.
const DRAFT = "snowhum-round-draft";
const FRESH_MS = 15 * 60 * 1000;
let draftMade = null;

function fieldsOf(form) {
  return [...form.querySelectorAll("input[name]:not([type=hidden])")];
}

function keepDraft() {
  const held = fieldsOf(form)
    .map((one) => [one.name, /radio|checkbox/.test(one.type) ? (one.checked ? one.value : "") : one.value])
    .filter(([, value]) => value !== "");
  try {
    localStorage.setItem(DRAFT, JSON.stringify({ made: draftMade ?? Date.now(), step, held }));
  } catch (full) {
    // Without room for a draft the page itself still holds it.
  }
}

function takeUpDraft() {
  let draft = null;
  try {
    draft = JSON.parse(localStorage.getItem(DRAFT) ?? "null");
  } catch (broken) {
    localStorage.removeItem(DRAFT);
  }
  if (draft === null || draft.held.length === 0) return;
  for (const [name, value] of draft.held) {
    for (const one of form.querySelectorAll(`[name="${CSS.escape(name)}"]`)) {
      if (!/radio|checkbox/.test(one.type)) one.value = value;
      else if (one.value === value) one.checked = true;
    }
  }
  step = draft.step ?? 0;
  if (Date.now() - draft.made > FRESH_MS) {
    draftMade = draft.made;
    told(form, `What was tapped ${new Date(draft.made).toLocaleString()} is here again, as of that time. `);
    const anew = document.createElement("button");
    anew.textContent = "Begin anew";
    anew.addEventListener("click", () => {
      form.reset();
      forget();
      document.getElementById("round-told").remove();
    });
    document.getElementById("round-told").append(anew);
  }
}

function forget() {
  localStorage.removeItem(DRAFT);
  draftMade = null;
  step = 0;
  verdicts();
  walk();
}

// The verdict after every tap.
let table = null;

// The table of the last sync, from the server or, out of reach, as it was kept.
async function fetchTable() {
  const address = "/api/round";
  const kept = "caches" in window ? await caches.open("snowhum-2") : null;
  try {
    const answer = await fetch(address);
    if (answer.ok) {
      await kept?.put(address, answer.clone());
      return await answer.json();
    }
  } catch (unreachable) {
    // The kept one stands in.
  }
  return (await kept?.match(address))?.json() ?? null;
}

const OPENINGS = { entrance: "the entrance", upper: "the upper hole" };
const SHUT = ["blocked", "drifted over", "iced", "plugged with bees"];
// Bits below which a look would hardly tell.
const HARDLY = 0.02;

const inHundred = (chance) => Math.min(99, Math.max(1, Math.round(100 * chance)));

// Signs of a hive as the table has them.
function seenInTable(hive) {
  const bare = form.querySelector("input[name=snow]:checked")?.value === "none";
  return seenAt(hive).map((one) => (bare && one.startsWith("dead=") && !one.includes(" on ") ? `${one} on ground` : one));
}

function lead(chance, seen) {
  if (seen.includes("poke=answered")) return "Alive: a bee answered.";
  if (chance >= 0.95) return "Alive.";
  if (chance >= 0.7) return "Most likely alive.";
  return chance > 0.3 ? "In doubt." : "Most likely dead.";
}

function nextLook(hive, seen, fieldset) {
  const asked = [...fieldset.querySelectorAll("fieldset.choices")].map((one) => ({
    asks: one.querySelector("legend").textContent,
    field: one.querySelector("input[value*='=']")?.value.split("=")[0],
    answers: [...one.querySelectorAll("input")].map((input) => input.value).filter(Boolean),
  }));
  const open = asked.filter(({ field }) => !seen.some((one) => one.split("=")[0] === field));
  const worth = open.map((one) => ({ ...one, bits: information(hive, seen, one.answers) }));
  const best = worth.sort((a, b) => b.bits - a.bits)[0];
  return best?.bits >= HARDLY ? `Would tell most next: ${best.asks.toLowerCase()}.` : "No further look today would tell much.";
}

function airSays(hive) {
  const field = form.elements.air;
  const typed = Number(field.value.trim().replace("−", "-").replace(",", "."));
  const inC = field.dataset.unit === "F" ? (typed - 32) / 1.8 : typed;
  const shown = field.dataset.unit === "F" ? `${Math.round(hive.air_c * 1.8 + 32)} °F` : `${Math.round(hive.air_c)} °C`;
  const apart = field.value.trim() !== "" && Math.abs(inC - hive.air_c) > 5;
  return apart ? `Reckoned for ${shown}, not for the air you measured: trust what comes after the sync.` : `Provisional, for ${shown}, until synced.`;
}

// What the round says of a hive so far; nothing where nothing was tapped.
export function verdictOf(fieldset) {
  const hive = table?.get(fieldset.dataset.colony);
  const seen = seenInTable(fieldset);
  if (seen.length === 0) return null;
  const shut = Object.keys(OPENINGS).filter((field) => SHUT.some((state) => seen.includes(`${field}=${state}`)));
  const clear = shut.map((field) => `Clear ${OPENINGS[field]}.`);
  if (!hive) return { words: [...clear, "Kept; the estimate comes with the next sync."].join(" ") };
  const others = [...form.querySelectorAll("[data-colony]")].filter((one) => one !== fieldset);
  const hangs = (other, one) => other.starts.get(one)?.hangs;
  const beside = others.flatMap((one) => {
    const other = table.get(one.dataset.colony);
    const signs = other ? seenInTable(one) : [];
    return signs.some((sign) => hangs(other, sign)) ? [tells(other, signs)] : [];
  });
  const chance = alive(hive, seen, seen.some((one) => hangs(hive, one)) ? beside : []);
  const before = inHundred(alive(hive, []));
  const words = [
    lead(chance, seen),
    `${inHundred(chance)} in 100 such hives live, ${before} before.`,
    seen.includes("hole=new rime") && chance >= 0.7 ? "The rime is their breath." : "",
    ...clear,
    nextLook(hive, seen, fieldset),
    airSays(hive),
  ];
  return { change: `${before} → ${inHundred(chance)}`, words: words.filter(Boolean).join(" ") };
}

function verdicts() {
  for (const hive of form.querySelectorAll("[data-colony]")) {
    const line = hive.querySelector("[data-verdict]");
    const verdict = verdictOf(hive);
    line.hidden = verdict === null;
    const words = verdict?.words ?? "";
    if (line.textContent !== words) line.textContent = words;
  }
}

// One hive a screen, then the summary.
let step = 0;

function walk() {
  const hives = [...form.querySelectorAll("[data-colony]")];
  step = Math.min(Math.max(step, 0), hives.length);
  form.classList.add("walking");
  hives.forEach((hive, at) => (hive.hidden = at !== step));
  form.querySelector(".outside").hidden = step !== 0;
  form.querySelector("#summary").hidden = step < hives.length;
  form.querySelector(".keep button.main").hidden = step < hives.length;
  const bar = form.querySelector("#steps");
  bar.hidden = false;
  const noted = hives.filter((hive) => seenAt(hive).length > 0).length;
  bar.querySelector("output").textContent = step < hives.length ? `${step + 1} of ${hives.length} · ${noted} noted` : `${noted} noted`;
  bar.querySelector("[data-go='-1']").disabled = step === 0;
  bar.querySelector("[data-go='1']").disabled = step === hives.length;
  if (step === hives.length) summary(hives);
}

function summary(hives) {
  const list = form.querySelector("#summary ul");
  list.replaceChildren();
  for (const hive of hives) {
    const seen = seenAt(hive);
    const line = document.createElement("li");
    const name = document.createElement("strong");
    name.textContent = hive.querySelector("legend").textContent;
    const verdict = verdictOf(hive);
    line.append(name, `: ${seen.length > 0 ? seen.join("; ").replaceAll("=", ": ") : "not looked at"}. `, verdict?.words ?? "");
    list.append(line);
  }
}

if (form) {
  takeUpDraft();
  form.addEventListener("input", () => {
    keepDraft();
    verdicts();
    walk();
  });
  form.querySelector("#steps").addEventListener("click", (event) => {
    const by = Number(event.target.closest("[data-go]")?.dataset.go ?? 0);
    if (by === 0) return;
    step += by;
    keepDraft();
    walk();
    form.scrollIntoView({ block: "start" });
  });
  walk();
  fetchTable().then((answer) => {
    if (answer?.version !== VERSION) return;
    table = new Map(answer.hives.map((hive) => [hive.colony, ready(hive)]));
    verdicts();
    walk();
  });
}

if ("serviceWorker" in navigator) navigator.serviceWorker.register("/offline.js").catch(() => {});
addEventListener("online", send);
document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && send());
setInterval(send, 30000);
send();
