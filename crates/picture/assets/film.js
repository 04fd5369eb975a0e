// The winter moves: a slider over its days, a minute if it is played. Without this the still of the day stands.

const MINUTE = 60000;

function act(film) {
  const data = JSON.parse(film.querySelector("script[type='application/json']").textContent);
  const control = (name) => film.querySelector(`[data-c="${name}"]`);
  const [play, slider, date, ask, guess, show, score] = ["play", "slider", "date", "ask", "guess", "show", "score"].map(control);
  const calm = matchMedia("(prefers-reduced-motion: reduce)").matches;
  const places = [...film.querySelectorAll("[data-hive]")];
  const part = (place, name) => place.querySelector(`[data-p="${name}"]`);
  const last = data.when.length - 1;
  let [day, then, frame] = [data.today, 0, 0];

  // Between two days a figure lies on the line between them.
  const between = (list, at) => {
    const [low, high] = [list[Math.floor(at)], list[Math.min(Math.ceil(at), last)]];
    return low === null || high === null ? low : low + (high - low) * (at % 1);
  };
  // The page's words, and figures as its language writes them.
  const { says } = data;
  const said = (text, ...figures) => text.replace(/#(\d)/g, (_, at) => figures[at]);
  const figure = (number, digits = 0) => number.toLocaleString(document.documentElement.lang, { minimumFractionDigits: digits, maximumFractionDigits: 2, useGrouping: false }).replace("-", "−");
  const set = (node, values) => node && Object.entries(values).forEach(([name, value]) => node.setAttribute(name, value));
  const write = (node, text) => { if (node && node.textContent !== text) node.textContent = text; };

  function words(own, on) {
    if (own.alive[on] === 0) return [says.dead, "", ""];
    const food = own.food[on] === null ? says.unknown : said(says.food, `${figure(own.food[on], 1)} ${data.mass}`, figure(own.low[on], 1), figure(own.high[on], 1));
    const wet = said(own.frost[on] >= 10 ? says.frosted : says.wet, `${figure(own.water[on])} ${data.water}`);
    const cluster = own.wide[on] === null ? "" : said(says.cluster, `${figure(own.wide[on])} ${data.length}`, `${figure(own.core[on])} ${data.degree}`);
    const alive = said(says.alive, Math.min(99, Math.max(1, Math.round(own.alive[on] / 10))));
    return [alive, food, cluster ? said(says.both, cluster, wet) : wet];
  }

  function draw(at) {
    day = Math.max(0, Math.min(last, at));
    const on = Math.round(day);
    const snow = between(data.snowHigh, day);
    places.forEach((place, index) => {
      const own = data.hives[index];
      const [food, radius, alive] = [between(own.foodHigh, day) ?? 0, between(own.radius, day) ?? 0, between(own.alive, day) / 1000];
      set(part(place, "food"), { height: food });
      const middle = Math.min(own.top + food + radius * 0.6, own.bottom - radius);
      set(part(place, "bees"), { r: radius, cy: middle });
      set(part(place, "core"), { r: radius * 0.55, cy: middle });
      set(part(place, "word"), { y: middle + 4, opacity: radius > 8 ? 1 : 0 });
      set(part(place, "rime"), { opacity: Math.min(1, between(own.caught, day) / 20) });
      set(part(place, "hole"), { opacity: between(own.frost, day) / 100 });
      set(part(place, "lost"), { opacity: 1 - alive });
      set(part(place, "snow"), { y: own.ground - snow, height: snow });
      const x = own.left === undefined ? 0 : own.left + own.step * day;
      set(part(place, "cursor"), { x1: x, x2: x });
      words(own, on).forEach((text, line) => write(place.querySelector(`[data-r="${line}"]`), text));
      film.querySelectorAll(`[data-notes="${index}"] li`).forEach((note) => { note.hidden = Number(note.dataset.day) > on; });
    });
    write(control("weather"), said(on > data.today ? says.ahead : says.outdoors, figure(data.coldest[on]), `${figure(data.warmest[on])} ${data.degree}`, `${figure(data.snow[on])} ${data.length}`));
    write(date, data.when[on]);
    if (document.activeElement !== slider || Number(slider.value) !== on) slider.value = on;
    slider.setAttribute("aria-valuetext", data.when[on]);
  }

  function stop() {
    cancelAnimationFrame(frame);
    frame = 0;
    write(play, calm ? says.week : says.play);
  }

  function tick(time) {
    draw(day + ((then ? time - then : 0) * last) / MINUTE);
    then = time;
    if (day >= Number(slider.max)) return stop();
    frame = requestAnimationFrame(tick);
  }

  play.addEventListener("click", () => {
    const end = Number(slider.max);
    if (calm) return draw(day >= end ? 0 : Math.min(end, Math.round(day) + 7));
    if (frame) return stop();
    if (day >= end) draw(0);
    then = 0;
    write(play, says.stop);
    frame = requestAnimationFrame(tick);
  });
  slider.addEventListener("input", () => { stop(); draw(Number(slider.value)); });

  // Guess first: the winter is shown up to its middle, and the rest once people have said what they think.
  ask?.addEventListener("click", () => {
    film.classList.add("guessing");
    [guess.hidden, score.hidden, ask.hidden] = [false, true, true];
    stop();
    slider.max = Math.floor(data.today / 2);
    draw(0);
    guess.querySelector("input")?.focus();
  });
  show?.addEventListener("click", () => {
    film.classList.remove("guessing");
    let [right, asked] = [0, 0];
    guess.querySelectorAll("fieldset").forEach((field) => {
      const said = field.querySelector("input:checked")?.value;
      if (said === undefined) return;
      asked += 1;
      if (said === field.dataset.came) right += 1;
    });
    [guess.hidden, ask.hidden, score.hidden] = [true, false, false];
    slider.max = last;
    write(score, said(says.score, right, asked));
    draw(data.today);
  });

  control("controls").hidden = false;
  if (ask && guess) ask.hidden = false;
  slider.max = last;
  stop();
  draw(data.today);
}

document.querySelectorAll(".film").forEach(act);
