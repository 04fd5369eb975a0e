// A page whose answer is on its way asks again until it is there. What is half typed is kept, and the keeper asked.

const EVERY_MS = 700;
const main = document.getElementById("main");
let typed = false;

document.addEventListener("input", () => { typed = true; });

// The page as it would be served now: whether it waits still.
async function waits() {
  const answer = await fetch(location.href, { cache: "no-store" });
  return !answer.ok || /<main[^>]* data-waits/.test(await answer.text());
}

function show() {
  if (!typed) return location.reload();
  const link = document.createElement("a");
  link.href = location.href;
  link.textContent = main.dataset.waits;
  const line = document.createElement("p");
  line.className = "band";
  line.setAttribute("role", "status");
  line.append(link);
  main.querySelector(".band")?.after(line);
  link.addEventListener("click", (event) => { event.preventDefault(); location.reload(); });
}

async function look() {
  if (!(await waits().catch(() => true))) return show();
  setTimeout(look, EVERY_MS);
}

if (main?.hasAttribute("data-waits")) setTimeout(look, EVERY_MS);
