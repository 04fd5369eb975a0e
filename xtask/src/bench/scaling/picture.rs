//! Seconds over particles, both on scales of tens.

use super::Measured;
use std::fmt::Write;

const WIDTH: f64 = 640.0;
const HEIGHT: f64 = 400.0;
const LEFT: f64 = 80.0;
const BOTTOM: f64 = 340.0;
/// Tens of particles and of seconds at the ends of the axes.
const PARTICLES: (f64, f64) = (2.0, 6.0);
const SECONDS: (f64, f64) = (-2.0, 3.0);

fn x(particles: f64) -> f64 {
    LEFT + (particles.log10() - PARTICLES.0) / (PARTICLES.1 - PARTICLES.0) * (WIDTH - LEFT - 40.0)
}

fn y(seconds: f64) -> f64 {
    BOTTOM - (seconds.log10() - SECONDS.0) / (SECONDS.1 - SECONDS.0) * (BOTTOM - 30.0)
}

/// The picture: rings for one thread, squares for two.
pub(super) fn draw(measured: &[Measured]) -> String {
    let mut svg = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {WIDTH} {HEIGHT}\" role=\"img\" font-family=\"sans-serif\" \
         font-size=\"14\">\n<title>Seconds of a winter by the number of particles</title>\n\
         <rect width=\"{WIDTH}\" height=\"{HEIGHT}\" fill=\"white\"/>\n"
    );
    axes(&mut svg);
    for of in measured {
        let (x, y) = (x(of.particles as f64), y(of.seconds.max(1e-3)));
        let _ = if of.threads == 1 {
            writeln!(
                svg,
                "<circle cx=\"{x:.1}\" cy=\"{y:.1}\" r=\"5\" fill=\"none\" stroke=\"black\" stroke-width=\"2\"/>"
            )
        } else {
            writeln!(
                svg,
                "<rect x=\"{:.1}\" y=\"{:.1}\" width=\"10\" height=\"10\" fill=\"#1f6f8b\"/>",
                x - 5.0,
                y - 5.0
            )
        };
    }
    svg += "<text x=\"100\" y=\"50\">ring: one thread; square: two threads</text>\n</svg>\n";
    svg
}

fn axes(svg: &mut String) {
    for tens in PARTICLES.0 as i32..=PARTICLES.1 as i32 {
        let (at, number) = (x(10f64.powi(tens)), 10i64.pow(tens.unsigned_abs()));
        let _ = writeln!(svg, "<path d=\"M{at:.1} 30V{BOTTOM}\" stroke=\"#ccc\"/>");
        let _ = writeln!(svg, "<text x=\"{at:.1}\" y=\"{}\" text-anchor=\"middle\">{number}</text>", BOTTOM + 20.0);
    }
    for tens in SECONDS.0 as i32..=SECONDS.1 as i32 {
        let (at, number) = (y(10f64.powi(tens)), 10f64.powi(tens));
        let _ = writeln!(svg, "<path d=\"M{LEFT} {at:.1}H{}\" stroke=\"#ccc\"/>", WIDTH - 40.0);
        let _ = writeln!(svg, "<text x=\"{}\" y=\"{:.1}\" text-anchor=\"end\">{number}</text>", LEFT - 8.0, at + 5.0);
    }
    let _ = writeln!(
        svg,
        "<text x=\"{}\" y=\"{}\" text-anchor=\"middle\">particles in all</text>",
        WIDTH / 2.0,
        BOTTOM + 44.0
    );
    let _ = writeln!(svg, "<text x=\"20\" y=\"20\">seconds for a winter of 4,344 hours</text>");
}
