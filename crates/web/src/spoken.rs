//! A page put into the keeper's words: British or North American, in one place for every page.
//!
//! What the keeper wrote stands as written, and so does everything under `translate="no"`, code and form fields.

use snowhum_apiary::Apiary;
use snowhum_say::Language;
use snowhum_units::Speech;

/// Elements whose text is not the house's own.
const UNTOUCHED: [&str; 5] = ["code", "script", "style", "textarea", "pre"];
/// The attribute that is read aloud.
const ALOUD: &str = " aria-label=\"";

/// The texts of a yard that are the keeper's own and hold a word this speech would change, as HTML writes them.
fn own_words(apiary: &Apiary, speech: Speech) -> Vec<String> {
    apiary.own_texts().filter(|text| speech.is_foreign(text)).map(escaped).collect()
}

/// A page of English texts in the names of the trade that are read; one in another language as it is.
pub(crate) fn in_trade_words(page: String, apiary: &Apiary, language: Language) -> String {
    match language.speech() {
        Some(speech) => spoken(&page, speech, &own_words(apiary, speech)),
        None => page,
    }
}

/// A text as HTML writes it.
pub(crate) fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}

/// A page in the keeper's words.
fn spoken(page: &str, speech: Speech, own: &[String]) -> String {
    let mut out = String::with_capacity(page.len() + page.len() / 50);
    let mut rest = page;
    while let Some(start) = rest.find('<') {
        out.push_str(&speech.said_around(&rest[..start], own));
        let Some(end) = rest[start..].find('>').map(|end| start + end + 1) else { break };
        let tag = &rest[start..end];
        out.push_str(&spoken_tag(tag, speech, own));
        rest = &rest[end..];
        if is_untouched(tag) {
            let end = end_of(rest, name(tag));
            out.push_str(&rest[..end]);
            rest = &rest[end..];
        }
    }
    out.push_str(rest);
    out
}

fn spoken_tag(tag: &str, speech: Speech, own: &[String]) -> String {
    let Some(start) = tag.find(ALOUD).map(|at| at + ALOUD.len()) else { return tag.to_owned() };
    let end = tag[start..].find('"').map_or(tag.len(), |end| start + end);
    format!("{}{}{}", &tag[..start], speech.said_around(&tag[start..end], own), &tag[end..])
}

fn name(tag: &str) -> &str {
    let tag = tag.trim_start_matches('<');
    tag.split([' ', '>', '/']).next().unwrap_or_default()
}

fn is_untouched(tag: &str) -> bool {
    let opens = !tag.starts_with("</") && !tag.ends_with("/>");
    opens && (UNTOUCHED.contains(&name(tag)) || tag.contains(" translate=\"no\""))
}

/// Where the element of this name that was just opened is closed.
fn end_of(rest: &str, name: &str) -> usize {
    let (opening, closing) = (format!("<{name}"), format!("</{name}>"));
    let mut depth = 1_u32;
    let mut at = 0;
    while let Some(next) = rest[at..].find('<').map(|next| at + next) {
        at = next + 1;
        let tag = &rest[next..];
        if tag.starts_with(&closing) {
            depth -= 1;
        } else if tag.starts_with(&opening) && tag[opening.len()..].starts_with([' ', '>']) {
            depth += 1;
        }
        if depth == 0 {
            return next;
        }
    }
    rest.len()
}

#[cfg(test)]
mod tests {
    use super::spoken;
    use snowhum_units::Speech;

    #[test]
    fn text_and_what_is_read_aloud_change_and_nothing_else() {
        let page = "<p class=\"floor\" aria-label=\"the floor\">Floor <code>floor=solid</code> roof</p>";
        let said =
            "<p class=\"floor\" aria-label=\"the bottom board\">Bottom board <code>floor=solid</code> outer cover</p>";
        assert_eq!(spoken(page, Speech::NorthAmerican, &[]), said);
        assert_eq!(spoken(page, Speech::British, &[]), page);
    }

    #[test]
    fn what_is_marked_stands_however_deep_it_lies() {
        let page = "<div translate=\"no\"><div>floor</div>floor</div><div>floor</div>";
        let said = "<div translate=\"no\"><div>floor</div>floor</div><div>bottom board</div>";
        assert_eq!(spoken(page, Speech::NorthAmerican, &[]), said);
        let own = ["Roof &amp; Floor".to_owned()];
        let named = spoken("<b>Roof &amp; Floor</b><i>floor</i>", Speech::NorthAmerican, &own);
        assert_eq!(named, "<b>Roof &amp; Floor</b><i>bottom board</i>");
    }
}
