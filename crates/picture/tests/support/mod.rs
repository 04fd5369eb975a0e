//! Reading pictures back.

/// One line of words and the room it takes, by widths of a wide sans-serif face.
pub(crate) struct Words {
    pub(crate) text: String,
    pub(crate) size: f64,
    pub(crate) left: f64,
    pub(crate) right: f64,
    pub(crate) top: f64,
    pub(crate) bottom: f64,
}

impl Words {
    pub(crate) fn covers(&self, other: &Self) -> bool {
        let slack = 0.5;
        self.left + slack < other.right
            && other.left + slack < self.right
            && self.top + slack < other.bottom
            && other.top + slack < self.bottom
    }
}

/// Every line of words of a picture.
pub(crate) fn words_of(svg: &str) -> Vec<Words> {
    let document = roxmltree::Document::parse(svg).unwrap();
    document.descendants().filter(|node| node.tag_name().name() == "text").map(words).collect()
}

fn words(node: roxmltree::Node<'_, '_>) -> Words {
    let number = |name: &str| node.attribute(name).unwrap().parse::<f64>().unwrap();
    let (x, y, size) = (number("x"), number("y"), number("font-size"));
    let text: String = node.descendants().filter(|inner| inner.is_text()).filter_map(|inner| inner.text()).collect();
    let wide = size * text.chars().map(letter).sum::<f64>();
    let left = match node.attribute("text-anchor") {
        Some("middle") => x - wide / 2.0,
        Some("end") => x - wide,
        _ => x,
    };
    Words { text, size, left, right: left + wide, top: y - 0.76 * size, bottom: y + 0.24 * size }
}

/// Advance widths of letters over the size. Source: a wide system face (DejaVu Sans), its tables rounded.
fn letter(letter: char) -> f64 {
    match letter {
        'i' | 'j' | 'l' => 0.28,
        ' ' | '\u{a0}' | '.' | ',' => 0.32,
        '\u{2009}' => 0.20,
        'f' => 0.35,
        't' | '-' | '(' | ')' => 0.39,
        'r' => 0.41,
        'm' => 0.97,
        'w' => 0.82,
        'M' | 'W' | '%' => 0.95,
        '−' => 0.84,
        'A'..='Z' => 0.69,
        '°' => 0.50,
        _ => 0.62,
    }
}

/// Contrast of two colours by their luminance. Source: Web Content Accessibility Guidelines 2.2.
pub(crate) fn contrast(one: &str, other: &str) -> f64 {
    let (a, b) = (luminance(one), luminance(other));
    (a.max(b) + 0.05) / (a.min(b) + 0.05)
}

fn luminance(colour: &str) -> f64 {
    let part = |at: usize| f64::from(u8::from_str_radix(&colour[at..at + 2], 16).unwrap()) / 255.0;
    let linear = |value: f64| if value <= 0.040_45 { value / 12.92 } else { ((value + 0.055) / 1.055).powf(2.4) };
    0.2126 * linear(part(1)) + 0.7152 * linear(part(3)) + 0.0722 * linear(part(5))
}
