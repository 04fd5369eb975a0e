//! Counts as they stand in a picture of any language.

/// A count with thin spaces between thousands.
pub(crate) fn count(value: u32) -> String {
    let digits = value.to_string();
    let mut out = String::new();
    for (at, digit) in digits.chars().enumerate() {
        if at > 0 && (digits.len() - at).is_multiple_of(3) && digits.len() > 4 {
            out.push('\u{2009}');
        }
        out.push(digit);
    }
    out
}

/// A count of bees, rounded to what an estimate can say.
pub(crate) fn about(value: u32) -> String {
    let step = match value {
        0..100 => 1,
        100..1_000 => 10,
        1_000..3_000 => 100,
        3_000..20_000 => 500,
        _ => 1_000,
    };
    count((f64::from(value) / f64::from(step)).round() as u32 * step)
}

#[cfg(test)]
mod tests {
    use super::about;

    #[test]
    fn counts_are_rounded_to_what_they_can_say() {
        assert_eq!(about(11_240), "11\u{2009}000");
        assert_eq!(about(2_340), "2300");
    }
}
