//! Rust text with everything blanked that is not code of the product: comments, strings, characters and test modules.
//!
//! The text keeps its length and its lines, so places found in it hold in the original.

/// Blanks comments, strings and character literals.
pub(crate) fn code(text: &str) -> String {
    let letters: Vec<char> = text.chars().collect();
    let mut kept = String::with_capacity(text.len());
    let mut at = 0;
    while at < letters.len() {
        let length = blank_length(&letters, at);
        if length == 0 {
            kept.push(letters[at]);
            at += 1;
            continue;
        }
        letters[at..at + length].iter().for_each(|letter| kept.push(if *letter == '\n' { '\n' } else { ' ' }));
        at += length;
    }
    kept
}

/// As [`code`], with `#[cfg(test)]` modules blanked as well.
pub(crate) fn product_code(text: &str) -> String {
    let mut kept: Vec<char> = code(text).chars().collect();
    let mark: Vec<char> = "#[cfg(test)]".chars().collect();
    let mut at = 0;
    while let Some(found) = find(&kept, &mark, at) {
        let after = found + mark.len();
        let end = match kept[after..].iter().position(|letter| matches!(letter, '{' | ';')) {
            Some(step) if kept[after + step] == '{' => closing(&kept, after + step).unwrap_or(kept.len() - 1),
            Some(step) => after + step,
            None => kept.len() - 1,
        };
        kept[found..=end].iter_mut().filter(|letter| **letter != '\n').for_each(|letter| *letter = ' ');
        at = end;
    }
    kept.into_iter().collect()
}

/// Place of the brace that closes the one at `open`.
pub(crate) fn closing(code: &[char], open: usize) -> Option<usize> {
    let mut depth = 0_usize;
    for (at, letter) in code.iter().enumerate().skip(open) {
        match letter {
            '{' => depth += 1,
            '}' => depth = depth.checked_sub(1)?,
            _ => {}
        }
        if depth == 0 {
            return Some(at);
        }
    }
    None
}

/// How many letters from here are a comment, string or character literal; 0 for code.
fn blank_length(letters: &[char], at: usize) -> usize {
    let rest = &letters[at..];
    match rest {
        ['/', '/', ..] => rest.iter().position(|letter| *letter == '\n').unwrap_or(rest.len()),
        ['/', '*', ..] => block_comment(rest),
        ['"', ..] => string(rest),
        ['r', '"' | '#', ..] if !follows_word(letters, at) => raw_string(rest),
        ['\'', '\\', ..] => 3 + rest.iter().skip(3).position(|letter| *letter == '\'').unwrap_or(0) + 1,
        ['\'', _, '\'', ..] => 3,
        _ => 0,
    }
    .min(rest.len())
}

fn follows_word(letters: &[char], at: usize) -> bool {
    // `br"…"` is a raw string too; any other letter before the r makes it the end of a name.
    let before = |back: usize| at.checked_sub(back).map(|place| letters[place]);
    let in_word = |letter: Option<char>| letter.is_some_and(|letter| letter.is_alphanumeric() || letter == '_');
    in_word(before(1)) && (before(1) != Some('b') || in_word(before(2)))
}

fn block_comment(rest: &[char]) -> usize {
    let (mut depth, mut at) = (0_usize, 0);
    while at + 1 < rest.len() {
        match (rest[at], rest[at + 1]) {
            ('/', '*') => depth += 1,
            ('*', '/') => depth -= 1,
            _ => {
                at += 1;
                continue;
            }
        }
        at += 2;
        if depth == 0 {
            return at;
        }
    }
    rest.len()
}

fn string(rest: &[char]) -> usize {
    let mut at = 1;
    while at < rest.len() {
        match rest[at] {
            '\\' => at += 2,
            '"' => return at + 1,
            _ => at += 1,
        }
    }
    rest.len()
}

/// Length of a raw string, or 0 where `r#` begins a raw name.
fn raw_string(rest: &[char]) -> usize {
    let hashes = rest[1..].iter().take_while(|letter| **letter == '#').count();
    if rest.get(1 + hashes) != Some(&'"') {
        return 0;
    }
    let close: Vec<char> = std::iter::once('"').chain(std::iter::repeat_n('#', hashes)).collect();
    find(rest, &close, 2 + hashes).map_or(rest.len(), |at| at + close.len())
}

fn find(text: &[char], what: &[char], from: usize) -> Option<usize> {
    (from..(text.len() + 1).saturating_sub(what.len())).find(|at| text[*at..].starts_with(what))
}

#[cfg(test)]
mod tests {
    use super::{code, product_code};

    fn words(text: &str) -> Vec<&str> {
        text.split_whitespace().collect()
    }

    #[test]
    fn comments_strings_and_characters_are_blanked_and_lines_kept() {
        let text = "a // one {\nb /* two\n/* three */ } */ c\n\"x \\\" {\" d\n'{' e '\\'' f 'g h r#\"i \" {\"# j b\"k\" r#type";
        let kept = code(text);
        assert_eq!(words(&kept), ["a", "b", "c", "d", "e", "f", "'g", "h", "j", "b", "r#type"]);
        assert_eq!(kept.lines().count(), text.lines().count());
        assert_eq!(kept.chars().count(), text.chars().count());
    }

    #[test]
    fn a_unicode_escape_is_one_character() {
        assert_eq!(words(&code("a '\\u{41}' b")), ["a", "b"]);
    }

    #[test]
    fn test_modules_are_no_part_of_the_product() {
        let text = "fn a() {}\n#[cfg(test)]\nmod tests {\n fn b() { let c = '}'; }\n}\n#[cfg(test)]\nmod d;\nfn e() {}";
        assert_eq!(words(&product_code(text)), ["fn", "a()", "{}", "fn", "e()", "{}"]);
    }
}
