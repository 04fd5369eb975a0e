//! The frame of a page that says nothing of the yard.

use maud::{DOCTYPE, Markup, html};

use crate::reader;

/// A page that says nothing of the yard.
pub(crate) fn bare(title: &str, body: &Markup) -> Markup {
    html! {
        (DOCTYPE)
        html lang=(reader::tongue().language().tag()) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="color-scheme" content="light dark";
                title { (title) " · Snowhum" }
                link rel="stylesheet" href="/snowhum.css";
            }
            body { main { (body) } }
        }
    }
}
