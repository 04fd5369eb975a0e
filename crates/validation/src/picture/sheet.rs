//! A sheet with two axes on which things are drawn, later ones over earlier ones.

use std::fmt::{self, Write as _};

use super::ink::{FAINT, Fill, INK, Mark, Stroke};
use super::sample::{self, Sample};
use super::{Axis, Picture};

/// Room for words and axes, in pixels.
const WIDTH: f64 = 720.0;
/// Height of the level axis.
const FOOT: f64 = 386.0;
const KEY_ROW: f64 = 24.0;
const TOP: f64 = 66.0;
const RIGHT: f64 = 24.0;
const FONT: &str = "system-ui, -apple-system, 'Segoe UI', Roboto, 'Liberation Sans', 'DejaVu Sans', sans-serif";

/// What a picture is called and what it says.
#[derive(Debug, Clone)]
pub(crate) struct Face {
    pub(crate) file: &'static str,
    pub(crate) title: String,
    pub(crate) description: String,
}

/// A picture being drawn.
pub(crate) struct Sheet {
    face: Face,
    x: Axis,
    y: Axis,
    drawn: String,
    key: Vec<(Sample, &'static str)>,
}

impl Sheet {
    /// A sheet with room of `left` pixels for the words of the upright axis.
    pub(crate) fn new(face: Face, left: f64, x: Axis, y: Axis) -> Self {
        let x = x.between(left, WIDTH - RIGHT);
        let y = y.between(FOOT, TOP);
        Self { face, x, y, drawn: String::new(), key: Vec::new() }
    }

    /// An area between two courses: place, lower, upper.
    pub(crate) fn band(self, points: &[(f64, f64, f64)], fill: Fill) -> Self {
        let there = points.iter().map(|(x, low, _)| (*x, *low));
        let back = points.iter().rev().map(|(x, _, high)| (*x, *high));
        let corners = self.course(there.chain(back));
        self.put(format_args!("<polygon points=\"{corners}\" {}/>", fill.attributes()))
    }

    /// A rectangle from `x` to `x`, `y` to `y`.
    pub(crate) fn block(self, x: [f64; 2], y: [f64; 2], fill: Fill) -> Self {
        self.band(&[(x[0], y[0], y[1]), (x[1], y[0], y[1])], fill)
    }

    pub(crate) fn line(self, points: &[(f64, f64)], stroke: Stroke) -> Self {
        let corners = self.course(points.iter().copied());
        self.put(format_args!("{}", sample::line(&corners, stroke)))
    }

    /// A thin upright line with feet.
    pub(crate) fn whisker(self, x: f64, y: [f64; 2]) -> Self {
        let (at, ends) = (self.x.at(x), y.map(|y| self.y.at(y)));
        self.put(format_args!("{}", sample::whisker(at, ends)))
    }

    pub(crate) fn mark(self, (x, y): (f64, f64), mark: Mark) -> Self {
        let (x, y) = (self.x.at(x), self.y.at(y));
        self.put(format_args!("{}", sample::mark(x, y, mark)))
    }

    /// What each way of drawing stands for, in two columns under the axes.
    pub(crate) fn key(self, rows: &[(Sample, &'static str)]) -> Self {
        Self { key: rows.to_vec(), ..self }
    }

    /// Words from a place on.
    pub(crate) fn words(self, (x, y): (f64, f64), words: &str) -> Self {
        let (x, y) = (self.x.at(x), self.y.at(y));
        let words = escaped(words);
        // A white edge keeps words legible over lines and bands.
        self.put(format_args!(
            "<text x=\"{x:.1}\" y=\"{y:.1}\" paint-order=\"stroke\" stroke=\"#fff\" stroke-width=\"4\" \
             stroke-linejoin=\"round\">{words}</text>"
        ))
    }

    /// The picture.
    pub(crate) fn finished(self) -> Picture {
        let Face { file, title, description } = &self.face;
        let height = self.key_top() + KEY_ROW * self.key.len().div_ceil(2) as f64 + 8.0;
        let (shown_title, shown_description) = (escaped(title), escaped(description));
        let svg = format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {WIDTH} {height}\" width=\"{WIDTH}\" height=\"{height}\" \
             role=\"img\" aria-labelledby=\"title description\" font-family=\"{FONT}\" font-size=\"14\" fill=\"{INK}\">\n\
             <title id=\"title\">{shown_title}</title>\n\
             <desc id=\"description\">{shown_description}</desc>\n\
             <rect x=\"0.5\" y=\"0.5\" width=\"{:.1}\" height=\"{:.1}\" rx=\"6\" fill=\"#fff\" stroke=\"{FAINT}\"/>\n\
             <text x=\"20\" y=\"29\" font-size=\"17\" font-weight=\"600\">{shown_title}</text>\n\
             {}{}{}{}</svg>\n",
            WIDTH - 1.0,
            height - 1.0,
            self.grid(),
            self.drawn,
            self.axes(),
            self.key_drawn(),
        );
        Picture { file, title: title.clone(), description: description.clone(), svg }
    }

    fn put(mut self, element: fmt::Arguments<'_>) -> Self {
        // Writing to a string cannot fail.
        let _ = self.drawn.write_fmt(element);
        self.drawn.push('\n');
        self
    }

    fn course(&self, points: impl Iterator<Item = (f64, f64)>) -> String {
        let corners: Vec<String> = points.map(|(x, y)| format!("{:.1},{:.1}", self.x.at(x), self.y.at(y))).collect();
        corners.join(" ")
    }

    fn key_top(&self) -> f64 {
        FOOT + if self.x.label.is_empty() { 34.0 } else { 54.0 }
    }

    fn key_drawn(&self) -> String {
        const COLUMNS: [f64; 2] = [20.0, 0.5 * WIDTH + 8.0];
        let one = |(at, (sample, words)): (usize, &(Sample, &str))| {
            let (x, middle) = (COLUMNS[at % 2], self.key_top() + KEY_ROW * ((at / 2) as f64 + 0.5));
            let (drawn, words) = (sample::in_key(x, middle, *sample), escaped(words));
            format!("{drawn}<text x=\"{:.1}\" y=\"{:.1}\">{words}</text>\n", x + 46.0, middle + 5.0)
        };
        self.key.iter().enumerate().map(one).collect()
    }

    fn grid(&self) -> String {
        let ([left, right], [bottom, top]) = (self.x.ends(), self.y.ends());
        let across = self.y.ticks.iter().map(|(at, _)| format!("M{left:.1} {:.1}H{right:.1}", self.y.at(*at)));
        let up = self.x.ticks.iter().map(|(at, _)| format!("M{:.1} {bottom:.1}V{top:.1}", self.x.at(*at)));
        let lines: String = across.chain(up).collect();
        format!("<path d=\"{lines}\" stroke=\"{FAINT}\" stroke-width=\"1\" fill=\"none\"/>\n")
    }

    fn axes(&self) -> String {
        let ([left, right], [bottom, top]) = (self.x.ends(), self.y.ends());
        let mut axes = format!(
            "<path d=\"M{left:.1} {top:.1}V{bottom:.1}H{right:.1}\" stroke=\"{INK}\" stroke-width=\"1.5\" fill=\"none\"/>\n"
        );
        for (at, word) in &self.x.ticks {
            let (x, word) = (self.x.at(*at), escaped(word));
            let _ =
                writeln!(axes, "<text x=\"{x:.1}\" y=\"{:.1}\" text-anchor=\"middle\">{word}</text>", bottom + 20.0);
        }
        for (at, word) in &self.y.ticks {
            let (y, word) = (self.y.at(*at) + 5.0, escaped(word));
            let _ = writeln!(axes, "<text x=\"{:.1}\" y=\"{y:.1}\" text-anchor=\"end\">{word}</text>", left - 8.0);
        }
        let _ = writeln!(
            axes,
            "<text x=\"{:.1}\" y=\"{:.1}\" text-anchor=\"end\">{}</text>\n<text x=\"{:.1}\" y=\"{:.1}\" text-anchor=\"start\">{}</text>",
            right,
            bottom + 41.0,
            escaped(self.x.label),
            20.0,
            top - 13.0,
            escaped(self.y.label),
        );
        axes
    }
}

fn escaped(words: &str) -> String {
    words.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_cannot_break_the_drawing() {
        let face = Face { file: "a.svg", title: "<b> & \"c\"".to_owned(), description: "d".to_owned() };
        let sheet = Sheet::new(face, 40.0, Axis::numbers("x", 0, 1, 1), Axis::numbers("y", 0, 1, 1));
        let svg = sheet.words((0.5, 0.5), "</svg>").finished().svg;
        assert_eq!(svg.matches("</svg>").count(), 1);
        assert!(svg.contains("&lt;b&gt; &amp; &quot;c&quot;") && !svg.contains("<b>"));
    }

    #[test]
    fn higher_values_are_drawn_higher() {
        let face = Face { file: "a.svg", title: String::new(), description: String::new() };
        let sheet = Sheet::new(face, 40.0, Axis::numbers("x", 0, 1, 1), Axis::numbers("y", 0, 1, 1));
        assert!(sheet.y.at(1.0) < sheet.y.at(0.0) && sheet.x.at(1.0) > sheet.x.at(0.0));
    }
}
