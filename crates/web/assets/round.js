// The round out of reach: entries wait in the browser under ids made here, and are sent when the server answers.
// Without this script every form is sent as it stands.

import { VERSION, alive, information, opened as ready, told as tells } from "/verdict.js";

const form = document.getElementById("round");
const NAME = "snowhum";
const WAITING = "waiting";

// The words come with the page, each by its name; names in braces are filled in here.
const words = new Map(
  [...document.querySelectorAll("template.words")]
    .flatMap((texts) => [...texts.content.children])
    .map((text) => [text.dataset.name, text.textContent]),
);
const say = (name, facts = {}) => (words.get(name) ?? "").replace(/\{(\w+)\}/g, (_, fact) => facts[fact]);

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
      } else await mark(entry, (await answer.json().catch(() => ({}))).wrong ?? say("declined"));
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
  strong.textContent = open.length > 0 ? `${say("waiting", { number: open.length, hives })} ` : "";
  line.append(strong);
  if (signedOut && open.length > 0) {
    const way = document.createElement("a");
    way.href = "/sign-in?to=/round";
    way.textContent = say("sign-in");
    line.append(way, ". ");
  }
  for (const entry of entries.filter((one) => one.wrong)) {
    const refused = document.createElement("span");
    refused.textContent = `${say("refused", { hive: entry.name, why: entry.wrong })} `;
    const away = document.createElement("button");
    away.textContent = say("put-back", { entries: entry.note.seen.join("; ") });
    away.addEventListener("click", async () => {
      const field = document.querySelector(`[data-colony="${CSS.escape(entry.note.colony)}"] [data-words]`);
      if (field) field.value = [...entry.note.seen, entry.note.words ?? ""].join("; ");
      await drop(entry.id);
      await show();
    });
    line.append(refused, away);
  }
}

function told(form, says) {
  let line = document.getElementById("round-told");
  if (line === null) {
    line = document.createElement("p");
    line.id = "round-told";
    line.className = "kept";
    line.setAttribute("role", "status");
    form.before(line);
  }
  line.textContent = says;
  line.scrollIntoView({ block: "center" });
}

form?.addEventListener("submit", async (event) => {
  event.preventDefault();
  const notes = notesOf(form);
  if (notes.length === 0) return told(form, say("none"));
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
  const facts = (list) => ({ number: list.length, hives: list.map((entry) => entry.name).join(", ") });
  const what = left.length === 0 ? say("stored", facts(notes)) : say(signedOut ? "signed-out" : "in-phone", facts(left));
  told(form, moved.length > 0 ? `${what} ${say("moved", { changes: moved.join("; ") })}` : what);
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
    told(form, `${say("draft", { when: new Date(draft.made).toLocaleString(document.documentElement.lang) })} `);
    const anew = document.createElement("button");
    anew.textContent = say("anew");
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

const OPENINGS = ["entrance", "upper"];
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
  if (seen.includes("poke=answered")) return say("answered");
  if (chance >= 0.95) return say("alive");
  if (chance >= 0.7) return say("most-likely-alive");
  return say(chance > 0.3 ? "in-doubt" : "most-likely-dead");
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
  return best?.bits >= HARDLY ? say("tells-most", best) : say("tells-little");
}

function airSays(hive) {
  const field = form.elements.air;
  const typed = Number(field.value.trim().replace("−", "-").replace(",", "."));
  const inC = field.dataset.unit === "F" ? (typed - 32) / 1.8 : typed;
  const air = field.dataset.unit === "F" ? `${Math.round(hive.air_c * 1.8 + 32)} °F` : `${Math.round(hive.air_c)} °C`;
  const apart = field.value.trim() !== "" && Math.abs(inC - hive.air_c) > 5;
  return say(apart ? "other-air" : "provisional", { air });
}

// What the round says of a hive so far; nothing where nothing was tapped.
export function verdictOf(fieldset) {
  const hive = table?.get(fieldset.dataset.colony);
  const seen = seenInTable(fieldset);
  if (seen.length === 0) return null;
  const shut = OPENINGS.filter((field) => SHUT.some((state) => seen.includes(`${field}=${state}`)));
  const clear = shut.map((field) => say(field));
  if (!hive) return { words: [...clear, say("next-sync")].join(" ") };
  const others = [...form.querySelectorAll("[data-colony]")].filter((one) => one !== fieldset);
  const hangs = (other, one) => other.starts.get(one)?.hangs;
  const beside = others.flatMap((one) => {
    const other = table.get(one.dataset.colony);
    const signs = other ? seenInTable(one) : [];
    return signs.some((sign) => hangs(other, sign)) ? [tells(other, signs)] : [];
  });
  const chance = alive(hive, seen, seen.some((one) => hangs(hive, one)) ? beside : []);
  const before = inHundred(alive(hive, []));
  const lines = [
    lead(chance, seen),
    say("live", { chance: inHundred(chance), before }),
    seen.includes("hole=new rime") && chance >= 0.7 ? say("breath") : "",
    ...clear,
    nextLook(hive, seen, fieldset),
    airSays(hive),
  ];
  return { change: `${before} → ${inHundred(chance)}`, words: lines.filter(Boolean).join(" ") };
}

function verdicts() {
  for (const hive of form.querySelectorAll("[data-colony]")) {
    const line = hive.querySelector("[data-verdict]");
    const verdict = verdictOf(hive);
    line.hidden = verdict === null;
    const says = verdict?.words ?? "";
    if (line.textContent !== says) line.textContent = says;
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
  bar.querySelector("output").textContent = say(step < hives.length ? "step" : "noted", { at: step + 1, all: hives.length, noted });
  bar.querySelector("[data-go='-1']").disabled = step === 0;
  bar.querySelector("[data-go='1']").disabled = step === hives.length;
  if (step === hives.length) summary(hives);
}

// What was tapped and typed at a hive, as it stands on the page.
function tapped(hive) {
  const chosen = [...hive.querySelectorAll("input:checked")].filter((one) => one.value).map((one) => {
    const answer = one.closest("label").textContent.trim();
    const asks = one.closest("fieldset.choices")?.querySelector("legend").textContent;
    return asks ? say("answer", { asks, answer }) : answer;
  });
  const typed = [...hive.querySelectorAll("input[data-before], input[data-words]")].filter((one) => one.value.trim());
  return [...chosen, ...typed.map((one) => say("answer", { asks: one.labels[0].textContent, answer: one.value.trim() }))];
}

function summary(hives) {
  const list = form.querySelector("#summary ul");
  list.replaceChildren();
  for (const hive of hives) {
    const line = document.createElement("li");
    const name = document.createElement("strong");
    name.textContent = hive.querySelector("legend").textContent;
    line.append(name, ` ${tapped(hive).join("; ") || say("not-looked")}. `, verdictOf(hive)?.words ?? "");
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
