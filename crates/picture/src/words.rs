//! Words in pictures: cleaned, escaped, measured, broken into lines.

/// Longest run of words kept, letters.
const LONGEST: usize = 400;

/// Text safe to stand in XML: letters XML knows no way to write and marks that turn the direction of reading round are
/// left out, white space is one space (a space that must not be broken stays), and very long text ends in "…".
pub(crate) fn clean(text: &str) -> String {
    let mut out = String::new();
    let mut count = 0;
    for letter in text.chars() {
        let is_narrow = matches!(letter, '\u{a0}' | '\u{2009}' | '\u{202f}');
        let letter = if letter.is_whitespace() && !is_narrow { ' ' } else { letter };
        if is_unwritable(letter) || (letter == ' ' && out.ends_with(' ')) {
            continue;
        }
        if count == LONGEST {
            out.push('…');
            break;
        }
        out.push(letter);
        count += 1;
    }
    out.trim().to_owned()
}

fn is_unwritable(letter: char) -> bool {
    letter.is_control()
        || matches!(letter, '\u{fffe}' | '\u{ffff}' | '\u{200e}' | '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}

/// Text with the five letters that mean something in XML written out.
pub(crate) fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\'' => out.push_str("&#39;"),
            letter => out.push(letter),
        }
    }
    out
}

/// Width of a line in units of the view, a little over what common sans-serif faces need. Judgement: measured roughly on
/// wide system faces, so that words fit in narrower ones too.
pub(crate) fn width(text: &str, size: f64) -> f64 {
    let letter = |letter: char| match letter {
        'i' | 'j' | 'l' | '.' | ',' | ':' | ';' | '\'' | '|' | '!' | 'I' => 0.32,
        'f' | 't' | 'r' | ' ' | '(' | ')' | '-' | '\u{a0}' | '\u{2009}' => 0.40,
        'm' | 'w' | 'M' | 'W' | '%' | '@' => 0.95,
        'A'..='Z' => 0.70,
        letter if u32::from(letter) > 0x2e80 => 1.05,
        _ => 0.61,
    };
    text.chars().map(letter).sum::<f64>() * size
}

/// Lines no wider than `room`, broken between words, or inside a word that is too long by itself.
pub(crate) fn lines(text: &str, size: f64, room: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in clean(text).split(' ').flat_map(|word| pieces(word, size, room)) {
        match lines.last_mut() {
            Some(line) if width(&format!("{line} {word}"), size) <= room => {
                line.push(' ');
                line.push_str(&word);
            }
            _ => lines.push(word),
        }
    }
    lines
}

/// One line no wider than `room`, ending in "…" if something had to go.
pub(crate) fn fitted(text: &str, size: f64, room: f64) -> String {
    let text = clean(text);
    if width(&text, size) <= room {
        return text;
    }
    let mut kept = String::new();
    for letter in text.chars() {
        if width(&kept, size) + width("…m", size) > room {
            break;
        }
        kept.push(letter);
    }
    format!("{}…", kept.trim_end())
}

fn pieces(word: &str, size: f64, room: f64) -> Vec<String> {
    let mut pieces = vec![String::new()];
    for letter in word.chars() {
        let last = pieces.last().map_or(0.0, |piece| width(piece, size));
        if last > 0.0 && last + width("m", size) > room && width(word, size) > room {
            pieces.push(String::new());
        }
        if let Some(piece) = pieces.last_mut() {
            piece.push(letter);
        }
    }
    pieces
}

#[cfg(test)]
mod tests {
    use super::{clean, escaped, fitted, lines, width};

    #[test]
    fn hostile_text_becomes_harmless_text() {
        assert_eq!(escaped("<script>&'\""), "&lt;script&gt;&amp;&#39;&quot;");
        assert_eq!(clean("a\u{0}\u{202e}b \n\t c\u{ffff}"), "ab c");
        assert!(clean(&"x".repeat(10_000)).chars().count() <= 401);
    }

    #[test]
    fn lines_fit_their_room_and_lose_nothing() {
        let text = "Lid underside frost with an extraordinarilylongwordthatmustbebroken in it";
        let broken = lines(text, 14.0, 90.0);
        assert!(broken.iter().all(|line| width(line, 14.0) <= 90.0 + 14.0), "{broken:?}");
        let letters = |text: &str| text.chars().filter(|c| *c != ' ').collect::<String>();
        assert_eq!(letters(&broken.concat()), letters(text));
        assert!(width(&fitted(text, 14.0, 90.0), 14.0) <= 90.0);
    }
}
