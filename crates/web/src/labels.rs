//! Tables that can be read on a narrow phone: there every row stands as a card, so every cell says its column's heading.
//!
//! It is done once for every page, after its words are chosen, so that no page can forget it. The roles are written out
//! because some browsers no longer call a thing a table once its rows are laid out as cards.

/// What stands in the way of a row as a card: a table that has its own way of being narrow.
const OWN_WAY: &str = "class=\"terms\"";

/// The page, with the cells of every table that has headings labelled.
pub fn labelled(page: &str) -> String {
    let mut out = String::with_capacity(page.len() + page.len() / 20);
    let mut rest = page;
    while let Some((before, table, after)) = element(rest, "table") {
        out.push_str(before);
        match heads(table).filter(|heads| !heads.is_empty() && !opening(table).contains(OWN_WAY)) {
            Some(heads) => out.push_str(&with_labels(table, &heads)),
            None => out.push_str(table),
        }
        rest = after;
    }
    out.push_str(rest);
    out
}

/// What stands before the first element of a name, the element, what stands after it.
fn element<'a>(text: &'a str, name: &str) -> Option<(&'a str, &'a str, &'a str)> {
    let opens = format!("<{name}");
    let mut from = 0;
    loop {
        let start = from + text[from..].find(&opens)?;
        let after = &text[start + opens.len()..];
        if after.starts_with(['>', ' ']) {
            let closes = format!("</{name}>");
            let end = start + text[start..].find(&closes)? + closes.len();
            return Some((&text[..start], &text[start..end], &text[end..]));
        }
        from = start + opens.len();
    }
}

fn opening(element: &str) -> &str {
    element.find('>').map_or(element, |end| &element[..=end])
}

/// The headings of a table's columns; none where it has no row of them.
fn heads(table: &str) -> Option<Vec<String>> {
    let (_, mut row, _) = element(table, "thead")?;
    let mut heads = Vec::new();
    while let Some((_, cell, after)) = element(row, "th") {
        heads.push(words(cell));
        row = after;
    }
    Some(heads)
}

/// The words of an element, still as HTML writes them.
fn words(element: &str) -> String {
    let mut words = String::new();
    for part in element.split('<') {
        words.push_str(part.split_once('>').map_or("", |(_, text)| text));
    }
    words.trim().to_owned()
}

fn with_labels(table: &str, heads: &[String]) -> String {
    let mut out = String::with_capacity(table.len() * 2);
    let (mut column, mut rest) = (0, table);
    while let Some(start) = rest.find('<') {
        let end = rest[start..].find('>').map_or(rest.len(), |end| start + end);
        let (tag, name) = (&rest[start..end], name(&rest[start..end]));
        out.push_str(&rest[..start]);
        out.push_str(tag);
        if let Some(role) = role(name, tag) {
            out.push_str(&format!(" role=\"{role}\""));
        }
        match name {
            "tr" => column = 0,
            "td" => {
                let label = heads.get(column).filter(|label| !label.is_empty() && !tag.contains(" data-label="));
                if let Some(label) = label {
                    out.push_str(&format!(" data-label=\"{label}\""));
                }
                column += columns(tag);
            }
            "th" => column += columns(tag),
            _ => {}
        }
        rest = &rest[end..];
    }
    out.push_str(rest);
    out
}

/// The name of an opening tag; nothing of a closing one.
fn name(tag: &str) -> &str {
    let name = tag.trim_start_matches('<');
    name.split([' ', '/', '>']).next().unwrap_or_default()
}

fn role(name: &str, tag: &str) -> Option<&'static str> {
    Some(match name {
        "table" => "table",
        "thead" | "tbody" => "rowgroup",
        "tr" => "row",
        "th" if tag.contains("scope=\"row\"") => "rowheader",
        "th" => "columnheader",
        "td" => "cell",
        _ => return None,
    })
}

/// How many columns a cell takes up.
fn columns(tag: &str) -> usize {
    let spans = tag.split("colspan=\"").nth(1).and_then(|text| text.split('"').next()?.parse().ok());
    spans.unwrap_or(1)
}

#[cfg(test)]
mod tests {
    use super::labelled;

    #[test]
    fn every_cell_says_its_column_and_the_headings_stay() {
        let page = "<p>a</p><table><thead><tr><th scope=\"col\">Hive</th><th scope=\"col\">Short</th></tr></thead>\
                    <tbody><tr><th scope=\"row\">Alder</th><td>2 <em>kg</em></td></tr></tbody></table><p>b</p>";
        let said = labelled(page);
        assert!(said.contains("<td role=\"cell\" data-label=\"Short\">2 <em>kg</em></td>"), "{said}");
        assert!(said.contains("<th scope=\"row\" role=\"rowheader\">Alder</th>"), "{said}");
        assert!(said.contains("<th scope=\"col\" role=\"columnheader\">Hive</th>"), "{said}");
        assert!(said.starts_with("<p>a</p><table role=\"table\">") && said.ends_with("</table><p>b</p>"), "{said}");
    }

    #[test]
    fn a_cell_over_several_columns_keeps_its_own_label_and_the_next_has_the_right_one() {
        let head = "<thead><tr><th>A</th><th>B &amp; <i>C</i></th><th>D</th></tr></thead>";
        let page = format!(
            "<table>{head}<tbody><tr><td colspan=\"2\" data-label=\"Fed\">x</td><td>y</td></tr><tr><td></td><td>z</td></tr></tbody></table>"
        );
        let said = labelled(&page);
        assert!(said.contains("data-label=\"Fed\" role=\"cell\">x<") && !said.contains("data-label=\"A\">x"), "{said}");
        assert!(said.contains("data-label=\"D\">y<") && said.contains("data-label=\"B &amp; C\">z<"), "{said}");
    }

    #[test]
    fn a_table_without_headings_or_with_its_own_way_is_left_alone() {
        for table in [
            "<table><tbody><tr><th scope=\"row\">a</th><td>b</td></tr></tbody></table>",
            "<table class=\"terms\"><thead><tr><th>a</th></tr></thead><tbody><tr><td>b</td></tr></tbody></table>",
        ] {
            assert_eq!(labelled(table), table);
        }
    }
}
