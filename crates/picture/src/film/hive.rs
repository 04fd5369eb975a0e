//! A hive of a film, cut open on a day.

use super::{FilmHive, FilmHiveDay, WIDTH, WinterFilm, line, number, rectangle};
use snowhum_say::film_picture as text;
use snowhum_units::Metre;
use std::fmt::Write;

/// Units of the view to a centimetre of hive.
const SCALE: f64 = 4.0;
/// Sky over the hive, and ground under it.
const SKY: f64 = 26.0;
const GROUND: f64 = 22.0;
/// Sides and lid as drawn.
const SIDE: f64 = 9.0;
/// Snow that is drawn, at most.
const MOST_SNOW: f64 = 110.0;

/// Where a hive's parts lie in its view.
pub(super) struct Frame {
    left: f64,
    inside: f64,
    pub(super) top: f64,
    pub(super) bottom: f64,
    pub(super) ground: f64,
    height: f64,
}

impl Frame {
    pub(super) fn of(hive: &FilmHive) -> Self {
        let cm = |metres: Metre| (metres.get() * 100.0).clamp(5.0, 80.0) * SCALE;
        let high: f64 = hive.boxes.iter().take(6).map(|one| cm(*one)).sum::<f64>().max(40.0);
        let inside = cm(hive.width);
        let top = SKY + SIDE;
        let ground = top + high + SIDE + 8.0;
        Self { left: (WIDTH - inside) / 2.0, inside, top, bottom: top + high, ground, height: ground + GROUND }
    }

    pub(super) fn food(&self, hive: &FilmHive, day: &FilmHiveDay) -> f64 {
        let share = day.food.map_or(0.0, |food| food.p50.get() / hive.holds.get().max(1.0));
        share.clamp(0.0, 1.0) * (self.bottom - self.top)
    }

    pub(super) fn radius(&self, day: &FilmHiveDay) -> f64 {
        let radius = day.radius.map_or(0.0, |radius| radius.get() * 100.0 * SCALE);
        radius.clamp(0.0, (self.inside / 2.0).min((self.bottom - self.top) / 2.0))
    }
}

impl WinterFilm {
    pub(super) fn hive(&self, out: &mut String, hive: &FilmHive, day: &FilmHiveDay) {
        let frame = Frame::of(hive);
        let (x, right, wide) = (frame.left, frame.left + frame.inside, frame.inside);
        let _ = write!(
            out,
            "<svg class=\"sn\" viewBox=\"0 0 {WIDTH} {}\" role=\"img\" aria-label=\"{}\">",
            number(frame.height),
            self.cell(&text::cut_open(&hive.name))
        );
        let snow = self.snow(self.today);
        rectangle(out, "sn-ground", "", [0.0, frame.ground, WIDTH, GROUND]);
        // Behind the hive, so that what is in it stays in sight.
        rectangle(out, "sn-snow", " data-p=\"snow\"", [0.0, frame.ground - snow, WIDTH, snow]);
        rectangle(
            out,
            "sn-wood",
            "",
            [x - SIDE, frame.top - SIDE, wide + 2.0 * SIDE, frame.bottom - frame.top + 2.0 * SIDE],
        );
        rectangle(out, "sn-comb", "", [x, frame.top, wide, frame.bottom - frame.top]);
        rectangle(out, "sn-reach", " data-p=\"food\"", [x, frame.top, wide, frame.food(hive, day)]);
        self.bees(out, hive, day, &frame);
        let mut joint = frame.bottom;
        for one in hive.boxes.iter().take(5) {
            joint -= (one.get() * 100.0).clamp(5.0, 80.0) * SCALE;
            if joint > frame.top + 1.0 {
                line(out, "", [x - SIDE, joint, right + SIDE, joint]);
            }
        }
        let rime: String = (0..(wide / 14.0) as usize)
            .map(|i| format!("M{} {}l5 9m0-9l-5 9", number(x + 6.0 + 14.0 * i as f64), number(frame.top + 1.0)))
            .collect();
        let _ = write!(
            out,
            "<path class=\"sn-l-cold\" stroke-width=\"1.6\" fill=\"none\" data-p=\"rime\" opacity=\"{}\" d=\"{rime}\"/>",
            number((day.caught / 20.0).clamp(0.0, 1.0))
        );
        dress(out, hive, day, &frame);
        let _ = write!(out, "<g data-p=\"lost\" opacity=\"{}\">", number(1.0 - day.alive));
        line(out, " stroke-width=\"3\"", [x, frame.top, right, frame.bottom]);
        line(out, " stroke-width=\"3\"", [x, frame.bottom, right, frame.top]);
        out.push_str("</g></svg>");
    }

    fn bees(&self, out: &mut String, hive: &FilmHive, day: &FilmHiveDay, frame: &Frame) {
        let (radius, food) = (frame.radius(day), frame.food(hive, day));
        let middle = (frame.top + food + radius * 0.6).min(frame.bottom - radius);
        for (part, tint, size) in [("bees", "bees", radius), ("core", "core", radius * 0.55)] {
            let _ = write!(
                out,
                "<circle class=\"sn-{tint} sn-l-full\" stroke-width=\"1\" data-p=\"{part}\" cx=\"{}\" cy=\"{}\" r=\"{}\"/>",
                number(WIDTH / 2.0),
                number(middle),
                number(size)
            );
        }
        // Of hives side by side each is too small for words; what stands under it says them.
        if self.hives.len() > 1 {
            return;
        }
        let _ = write!(
            out,
            "<text data-p=\"word\" opacity=\"{3}\" x=\"{0}\" y=\"{1}\" font-size=\"14.5\" text-anchor=\"middle\">{4}</text>\
             <text x=\"{0}\" y=\"{2}\" font-size=\"14.5\" text-anchor=\"middle\">{5}</text>",
            number(WIDTH / 2.0),
            number(middle + 4.0),
            number(frame.top + 15.0),
            if radius > 8.0 { 1 } else { 0 },
            self.cell(&text::bees()),
            self.cell(&text::comb_food()),
        );
    }

    /// Snow on a day, in units of the view.
    pub(super) fn snow(&self, day: usize) -> f64 {
        let depth = self.days.get(day).map_or(0.0, |one| one.snow.get());
        (depth * 100.0 * SCALE).clamp(0.0, MOST_SNOW)
    }
}

/// Hole with its frost, and wrap.
fn dress(out: &mut String, hive: &FilmHive, day: &FilmHiveDay, frame: &Frame) {
    let (x, right) = (frame.left, frame.left + frame.inside);
    if hive.has_hole {
        let (hx, hy) = (x - SIDE, frame.top + 18.0);
        rectangle(out, "sn-hole", "", [hx, hy - 4.0, SIDE, 8.0]);
        let _ = write!(
            out,
            "<path class=\"sn-l-cold\" stroke-width=\"2\" fill=\"none\" data-p=\"hole\" opacity=\"{}\" d=\"M{1} {2}h-12m2-5l8 10m0-10l-8 10\"/>",
            number(day.frost_at_hole),
            number(hx - 2.0),
            number(hy)
        );
    }
    if hive.is_wrapped {
        let _ = write!(
            out,
            "<path class=\"sn-l-full\" stroke-width=\"2.5\" stroke-dasharray=\"7 4\" fill=\"none\" d=\"M{0} {1}V{2}H{3}V{1}\"/>",
            number(x - SIDE - 4.0),
            number(frame.bottom + SIDE),
            number(frame.top - SIDE),
            number(right + SIDE + 4.0)
        );
    }
}
