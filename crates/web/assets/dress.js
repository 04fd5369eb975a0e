// A hive is drawn anew with each part that is tapped. Without this script a button does it.

const form = document.querySelector("form[data-dress]");

async function draw() {
  const sent = new URLSearchParams(new FormData(form));
  sent.set("do", "look");
  const answer = await fetch(form.action, { method: "POST", body: sent });
  if (!answer.ok) return;
  const drawn = new DOMParser().parseFromString(await answer.text(), "text/html").querySelectorAll(".dressed");
  form.querySelectorAll(".dressed").forEach((one, at) => { if (drawn[at]) one.replaceChildren(...drawn[at].childNodes); });
}

form?.addEventListener("change", (event) => {
  if (event.target.matches(".round-hive select, .round-hive .choices input")) draw().catch(() => {});
});
form?.querySelectorAll("button[value=look]").forEach((one) => { one.hidden = true; });
